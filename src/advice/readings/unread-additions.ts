import type { LogSnapshot, SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { lastReadingOf, rowFacts, rowsOfBath } from "../bath-facts.ts";

type Additions = readonly SnapshotRow<"additions">[];

const isOpening = (row: SnapshotRow<"additions">): boolean => rowFacts(row).text("purpose") === "opening";

const ofKind = (rows: Additions, kind: "concentrate" | "water"): Additions =>
  rows.filter((row) => rowFacts(row).text("kind") === kind);

/** Half a minute, as the sheet compares times. */
const halfMinute = 1 / 2880;

/**
 * What went into a bath and no reading has followed yet, in the order of time. Times have no seconds: at the minute of
 * the last reading each reading after a top-up answers one addition of concentrate, and any of them answers the water;
 * any other reading counts as taken before. The column Not read yet of Baths goes by the same rule.
 */
export function unreadAdditions(log: LogSnapshot, bath: string): Additions {
  const readAt = lastReadingOf(log, bath)?.cells.when;
  const added = rowsOfBath(log, "additions", bath).filter(({ cells }) => typeof cells.when === "number");
  if (typeof readAt !== "number") return added;
  const at = (row: SnapshotRow<"additions" | "readings">): number => Number(row.cells.when) - readAt;
  const atThatMinute = added.filter((row) => Math.abs(at(row)) <= halfMinute && !isOpening(row));
  const answers = rowsOfBath(log, "readings", bath).filter((row) => {
    const { number, text } = rowFacts(row);
    return text("purpose") === "after top-up" && (number("ph") ?? 0) > 0 && Math.abs(at(row)) <= halfMinute;
  }).length;
  const unread = new Set([
    ...added.filter((row) => at(row) > halfMinute),
    ...ofKind(atThatMinute, "concentrate").slice(answers),
    ...(answers === 0 ? ofKind(atThatMinute, "water") : []),
  ]);
  return added.filter((row) => unread.has(row));
}

/** The last concentrate among them that was not the opening dose. */
export function unreadTopUp(log: LogSnapshot, bath: string): SnapshotRow<"additions"> | undefined {
  return ofKind(unreadAdditions(log, bath), "concentrate")
    .filter((row) => !isOpening(row))
    .at(-1);
}
