import { describe, expect, it } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import { type EntryKind, entryWrites, settledCounts, shopCounts } from "../../../bench/entry-writes.ts";
import { recalculated } from "../../../bench/recalculation.ts";

const callsOf = (kind: EntryKind, readings: number): number =>
  recalculated(jobLog, shopCounts(readings), entryWrites[kind]).calls;

const inUse = 3;

/** Where all baths but a few in use are settled. */
function callsOnceSettled(kind: EntryKind, readings: number): number {
  const counts = shopCounts(readings);
  return recalculated(jobLog, counts, entryWrites[kind], settledCounts(counts, inUse)).calls;
}

/** Entries that change nothing that older rows are judged by. */
const routine: readonly EntryKind[] = [
  "reading",
  "pH after a top-up",
  "item",
  "bench test",
  "cost line",
  "count in",
  "stock move",
  "release",
  "reading corrected",
  "change-out",
];

describe("the calls that an entry makes Excel recalculate", () => {
  it.each(routine)("%s: at most 30 in a log of 300 readings, 40 in one of 3,000", (kind) => {
    expect(callsOf(kind, 300)).toBeLessThanOrEqual(30);
    expect(callsOf(kind, 3000)).toBeLessThanOrEqual(40);
  });

  it.each(["top-up", "load", "care"] as const)(
    "%s: as few, but for one a release, whose acid goes by all that went in and out",
    (kind) => {
      for (const [readings, most] of [
        [300, 30],
        [3000, 40],
      ] as const)
        expect(callsOf(kind, readings) - (shopCounts(readings).releases ?? 0)).toBeLessThanOrEqual(most);
    },
  );

  it.each(["baseline", "charge", "meter check"] as const)(
    "%s: the rows of readings, which are judged anew, and no more than 12 calls each",
    (kind) => {
      for (const readings of [300, 3000]) expect(callsOf(kind, readings)).toBeLessThanOrEqual(12 * readings);
    },
  );

  it.each([...routine, "top-up", "load", "care"] as const)(
    "%s: at most 30 where all baths but three are settled, however long the log is",
    (kind) => {
      for (const readings of [300, 3000]) expect(callsOnceSettled(kind, readings)).toBeLessThanOrEqual(30);
    },
  );

  it.each(["baseline", "charge", "meter check"] as const)(
    "%s: the readings of the baths in use alone where all others are settled, however long the log is",
    (kind) => {
      const readingsInUse = inUse * 30;
      expect(callsOnceSettled(kind, 3000)).toBe(callsOnceSettled(kind, 300));
      expect(callsOnceSettled(kind, 3000)).toBeLessThanOrEqual(12 * readingsInUse);
    },
  );

  it("is as Excel has it: a whole column hangs on each of its cells, a cell of the row on that cell alone", () => {
    const { byColumn } = recalculated(jobLog, shopCounts(300), entryWrites.reading);
    expect(byColumn.get("readings.verdict")).toBeUndefined();
    expect(byColumn.get("readings.againstTrigger")).toBe(1);
    const { byColumn: ofCheck } = recalculated(jobLog, shopCounts(300), entryWrites["meter check"]);
    expect(ofCheck.get("readings.phCorrected")).toBe(300);
  });
});
