import { describe, expect, it } from "vitest";

import { achievedAccuracy } from "./achieved-accuracy.ts";

const { figures, coverage } = achievedAccuracy();

describe("the chemistry against reference figures", () => {
  it.each(figures)("holds its goal for $subject (against $against)", (row) => {
    expect(row.rows).toBeGreaterThan(0);
    expect(row.largest).toBeLessThanOrEqual(row.goalLargest);
    if (row.goalRootMeanSquare !== undefined) expect(row.rootMeanSquare).toBeLessThanOrEqual(row.goalRootMeanSquare);
  });

  it("contains the needed top-up in its range for at least 95 % of baths of unknown builder", () => {
    expect(coverage.rows).toBeGreaterThanOrEqual(36);
    expect(coverage.contained / coverage.rows).toBeGreaterThanOrEqual(0.95);
    expect(coverage.smallestWidth).toBeGreaterThan(0);
  });
});
