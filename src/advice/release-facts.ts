import type { ColumnId } from "../joblog/formula/log-names.ts";
import type { SnapshotRow } from "../joblog/model/log-snapshot.ts";
import { releaseState } from "../joblog/model/words.ts";
import { rowFacts, rowsOfBath } from "./bath-facts.ts";
import { completedRow, type DraftedRow, draftedRow } from "./drafted-row.ts";
import type { FilledFields } from "./filled-fields.ts";
import type { LogContext } from "./log-context.ts";

/** A release as it will stand: cells that its row holds already, and what is typed now. */
export type ReleaseFacts = DraftedRow<"releases">;

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

/** `columns`: those that the form asks for. A cell that the row holds already stays. */
export function releaseFacts(
  row: SnapshotRow<"releases"> | undefined,
  bath: string | undefined,
  filled: FilledFields<ColumnId<"releases">>,
  columns: readonly ColumnId<"releases">[],
  { log }: LogContext,
): ReleaseFacts {
  const held: SnapshotRow<"releases">["cells"] = row?.cells ?? {};
  const cells = Object.fromEntries(
    columns.filter((id) => held[id] === undefined).map((id) => [id, filled.number(id) ?? filled.text(id)]),
  );
  return row === undefined
    ? draftedRow(log, "releases", { bath, ...cells })
    : completedRow(log, "releases", row, cells);
}

export interface ReleaseLimits {
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly permit: string | undefined;
}

/** The limits typed for this release, or else the shop's own. None are built in. */
export function limitsOf(release: ReleaseFacts): ReleaseLimits {
  return { low: release.number("lowUsed"), high: release.number("highUsed"), permit: release.text("permitUsed") };
}

/** Limits of the shop's own, where a release brings none. */
export function shopsLimits({ log }: LogContext): ReleaseLimits {
  return limitsOf(draftedRow(log, "releases", {}));
}

/** How far the release is, in the words of its row; limits that leave no room are none. */
export function releaseStateOf(release: ReleaseFacts): string {
  return release.text("state") ?? releaseState.limits;
}

/** Whether limits and results are in, so that the release itself can be entered. */
export function isEntered(release: ReleaseFacts): boolean {
  const after: readonly string[] = [releaseState.entered, releaseState.incomplete, releaseState.released];
  return after.includes(releaseStateOf(release));
}
