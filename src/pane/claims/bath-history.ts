import { rowsOfBath } from "../../advice/bath-facts.ts";
import { shortMoment } from "../../advice/wording/moments.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { claimsInBath } from "./share-plan.ts";

interface BathVisit {
  readonly claim: string;
  /** When its loads went in, and what was done to the bath before the first. */
  readonly words: string;
}

const timesOf = (rows: readonly AnyRow[]): readonly number[] =>
  rows.flatMap(({ cells }) => (typeof cells.when === "number" ? [cells.when] : []));

function wordsFor(log: LogSnapshot, bath: string, claim: string): string {
  const loads = rowsOfBath(log, "loads", bath).filter(({ cells }) => isSameText(String(cells.claim ?? ""), claim));
  const times = timesOf(loads);
  const [first, last] = [times[0], times.at(-1)];
  const count = `${String(loads.length)} ${loads.length === 1 ? "load" : "loads"}`;
  if (first === undefined || last === undefined) return `${count}, without a time.`;
  const cleaned = timesOf(
    rowsOfBath(log, "care", bath).filter(({ cells }) => cells.kind === "skim" || cells.kind === "filter"),
  ).findLast((time) => time <= first);
  const before =
    cleaned === undefined
      ? "No skimming or filtering before it."
      : `Skimmed or filtered before it: ${shortMoment(cleaned)}.`;
  return `${shortMoment(first)}${last === first ? "" : ` to ${shortMoment(last)}`}, ${count}. ${before}`;
}

/** The claims of a bath in the order in which they came in. */
export function bathHistory(log: LogSnapshot, bath: string): readonly BathVisit[] {
  return claimsInBath(log, bath).map((claim) => ({ claim, words: wordsFor(log, bath, claim) }));
}
