import { describe, expect, it } from "vitest";

import { excelRound } from "../../../src/workbench/host/functions/excel-round.ts";

describe("Excel's rounding", () => {
  it.each([
    // Results stated in Microsoft's support article on ROUND.
    [2.15, 1, 2.2],
    [2.149, 1, 2.1],
    [-1.475, 2, -1.48],
    [21.5, -1, 20],
    [626.3, -3, 1000],
    [1.98, -1, 0],
    [-50.55, -2, -100],
  ])("of %d to %d places is %d", (value, places, expected) => {
    expect(excelRound(value, places)).toBe(expected);
  });

  it("keeps very small and very large numbers", () => {
    expect(excelRound(1.23e-9, 10)).toBe(1.2e-9);
    expect(excelRound(1.5e20, 2)).toBe(1.5e20);
  });
});
