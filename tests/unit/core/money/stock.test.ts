import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { reorderPoint, stockDays } from "../../../../src/core/money/stock.ts";

describe("the reorder point", () => {
  it("is 16.5 for 2.1 a day, 5 days and a safety stock of 6", () => {
    expect(reorderPoint(2.1, 5, 6)).toBeCloseTo(16.5, 12);
    expect(reorderPoint(2.1, 5, 0)).toBeCloseTo(10.5, 12);
  });

  it.each([
    [0, 5, 6],
    [-1, 5, 6],
    [2.1, 0, 6],
    [2.1, 4000, 6],
    [2.1, 5, -1],
  ])("is refused for %d a day, %d days and %d in reserve", (...given) => {
    expect(() => reorderPoint(...given)).toThrow(OutOfRange);
  });
});

describe("the days that a stock lasts", () => {
  it("are counted at the middle of the daily issues, which one large charge does not sway", () => {
    expect(stockDays(10, [1, 2, 4])).toBe(5);
    expect(stockDays(10, [1, 2, 400])).toBe(5);
    expect(stockDays(10, [1, 4])).toBe(4);
    expect(stockDays(0, [1])).toBe(0);
  });

  it("do not depend on the unit", () => {
    const issues = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(issues, fc.double({ min: 0.1, max: 1000, noNaN: true }), (list, onHand) => {
        const inLiters = stockDays(
          onHand * 3.785,
          list.map((issue) => issue * 3.785),
        );
        expect(Math.abs(inLiters / stockDays(onHand, list) - 1)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });

  it.each([
    [-1, [1]],
    [10, [-1]],
    [10, [0]],
  ])("are refused for a stock of %d and issues of %j", (onHand, issues) => {
    expect(() => stockDays(onHand, issues)).toThrow(OutOfRange);
  });
});
