import type { SnapshotRow } from "../joblog/model/log-snapshot.ts";
import { releaseState } from "../joblog/model/words.ts";
import { askText } from "./ask.ts";
import { type RowFacts, rowFacts, rowsOfBath } from "./bath-facts.ts";
import type { LogContext } from "./log-context.ts";

/** A release as it will stand: cells that its row holds already, and what is typed now. */
export type ReleaseFacts = RowFacts<"releases">;

/** A treatment that can lead to no release: a result over its limit, or all three stages poured and the pH still outside. What it found stays; the bath is treated again in a row of its own. */
export function isSpent(row: SnapshotRow<"releases">): boolean {
  const { number, text } = rowFacts(row);
  const state = text("state");
  const outside = state === releaseState.above || state === releaseState.below;
  return (
    number("releasedAt") === undefined &&
    (text("analysesResult") === "over a limit" || (number("phAfter3") !== undefined && outside))
  );
}

/** The release of a bath that waits for stages, results or the release itself. */
export function openRelease(context: LogContext, bath: string | undefined): SnapshotRow<"releases"> | undefined {
  return bath === undefined
    ? undefined
    : rowsOfBath(context.log, "releases", bath)
        .filter((row) => row.cells.releasedAt === undefined && !isSpent(row))
        .at(-1);
}

export interface ReleaseLimits {
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly permit: string | undefined;
}

/** The limits typed for this release, or else the shop's own. None are built in. */
export function limitsOf(release: ReleaseFacts, { log }: LogContext): ReleaseLimits {
  const { sewerLow, sewerHigh, permit } = log.fields;
  return {
    low: release.number("limitLow") ?? (typeof sewerLow === "number" ? sewerLow : undefined),
    high: release.number("limitHigh") ?? (typeof sewerHigh === "number" ? sewerHigh : undefined),
    permit: release.text("permit") ?? (permit === undefined ? undefined : String(permit)),
  };
}

/** After the latest stage, or before any acid. */
export function lastPhOf(release: ReleaseFacts): number | undefined {
  return (["phAfter3", "phAfter2", "phAfter1", "ph"] as const).map(release.number).find((ph) => ph !== undefined);
}

/** How far the release is, in the words of the Release sheet and in its order; "entered" opens the release fields, and says no more. */
export function releaseStateOf(release: ReleaseFacts, context: LogContext): string {
  const { low, high } = limitsOf(release, context);
  const ph = lastPhOf(release);
  if (low === undefined || high === undefined) return releaseState.limits;
  if (ph === undefined) return releaseState.ph;
  const place = askText("DISCHARGECHECK", ph, low, high);
  if (!place.known) return releaseState.limits;
  if (place.value === "below") return releaseState.below;
  if (place.value === "above") return releaseState.above;
  const result = release.text("analysesResult");
  if (result === "over a limit") return releaseState.over;
  return result === undefined || result === "awaited" ? releaseState.results : releaseState.entered;
}
