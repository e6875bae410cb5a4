import type { ColumnId } from "../joblog/formula/log-names.ts";
import { isSameText } from "../joblog/model/same-text.ts";
import { soilGrades, yesNo } from "../joblog/model/words.ts";
import { findRow, rowFacts, rowsOfBath } from "./bath-facts.ts";
import type { FilledFields } from "./filled-fields.ts";
import type { LogContext } from "./log-context.ts";

const [yes] = yesNo;

/** Words by which a claim's note says that its pieces want a bath of their own. */
const flagWords = /pre-?\s?19\d\d|\blead\b|asbestos|arsenic|cadmium|isolate/i;

/** Whether pieces of a claim that must not share could be in a load of this bath. */
function flagged(claim: string, bath: string, { log }: LogContext): boolean {
  const old = log.rows.items
    .map(rowFacts)
    .filter((item) => isSameText(item.text("claim"), claim) && item.text("pre1978") === yes);
  if (old.length > 0)
    return old.some((item) => (item.text("route") ?? "bath") === "bath" && isSameText(item.text("bath") ?? bath, bath));
  const row = findRow(log, "claims", "claim", claim);
  return row !== undefined && flagWords.test(rowFacts(row).text("note") ?? "");
}

const others = (claims: readonly string[]): string =>
  claims.length === 1 ? `claim ${claims.join("")} has` : `claims ${claims.join(", ")} have`;

const soilRank = (soil: string | undefined): number => soilGrades.findIndex((grade) => grade === soil);

/** A dirtier claim was in since the bath was last skimmed or filtered, and this one comes in for the first time. */
function cleanAfterDirty(
  filled: FilledFields<ColumnId<"loads">>,
  bath: string,
  claim: string,
  context: LogContext,
): readonly string[] {
  const now = filled.number("when") ?? Number.POSITIVE_INFINITY;
  const before = rowsOfBath(context.log, "loads", bath)
    .map(rowFacts)
    .filter((load) => (load.number("when") ?? now) < now);
  if (before.some((load) => isSameText(load.text("claim"), claim))) return [];
  const dirtier = before.filter((load) => soilRank(load.text("soil")) > soilRank(filled.text("soil")));
  const last = Math.max(...before.map((load) => load.number("when") ?? 0));
  const cleaned = rowsOfBath(context.log, "care", bath)
    .map(rowFacts)
    .some(
      (care) =>
        ["skim", "filter"].includes(care.text("kind") ?? "") &&
        (care.number("when") ?? 0) >= last &&
        (care.number("when") ?? 0) <= now,
    );
  if (dirtier.length === 0 || cleaned || filled.text("soil") === undefined) return [];
  return [
    `Claim ${claim} comes into this bath after heavier soil of ${[...new Set(dirtier.map((load) => load.text("claim") ?? ""))].join(", ")}, with no skimming or filtering since. Clean before dirty: run it anyway?`,
  ];
}

/** Asked before a load goes into a bath that other claims share: flagged pieces never share, clean goes before dirty. */
export function loadsFlaggedOrDirty(filled: FilledFields<ColumnId<"loads">>, context: LogContext): readonly string[] {
  const [bath, claim] = [filled.text("bath"), filled.text("claim")];
  if (bath === undefined || claim === undefined) return [];
  const inBath = [
    ...new Set(
      rowsOfBath(context.log, "loads", bath)
        .flatMap((row) => row.cells.claim ?? [])
        .map(String),
    ),
  ].filter((one) => one !== claim);
  const dirty = cleanAfterDirty(filled, bath, claim, context);
  if (inBath.length > 0 && flagged(claim, bath, context)) {
    return [
      `Claim ${claim} has pieces with old paint or lead suspected, and ${others(inBath)} been in this bath. Flagged pieces never share a bath: are none of them in this load?`,
      ...dirty,
    ];
  }
  const flaggedBefore = inBath.filter((one) => flagged(one, bath, context));
  if (flaggedBefore.length === 0) return dirty;
  return [
    `This bath has had claim ${flaggedBefore.join(", ")}, with pieces of old paint or lead suspected. Were none of them in it?`,
    ...dirty,
  ];
}
