import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { shareOut } from "../../src/core/money/share.ts";
import { runs } from "../setup/random-runs.ts";

const total = fc.integer({ min: -1e11, max: 1e11 }).map((cents) => cents / 100);
const weights = fc
  .array(fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 1000 }), fc.double({ min: 0, max: 1000, noNaN: true })), {
    minLength: 1,
    maxLength: 40,
  })
  .filter((list) => list.some((weight) => weight > 1e-6));

const cents = (amount: number): number => Math.round(amount * 100);

describe("shares of a total", () => {
  it("add up to the total to the cent", () => {
    fc.assert(
      fc.property(total, weights, (amount, list) => {
        const sum = shareOut(amount, list).reduce((before, part) => before + cents(part), 0);
        expect(sum).toBe(cents(amount));
      }),
      runs(1000),
    );
  });

  it("lie within a cent of the exact share", () => {
    fc.assert(
      fc.property(total, weights, (amount, list) => {
        const sum = list.reduce((before, weight) => before + weight, 0);
        shareOut(amount, list).forEach((part, index) => {
          expect(Math.abs(part - (amount * (list[index] ?? 0)) / sum)).toBeLessThanOrEqual(
            0.01 + Math.abs(amount) * 1e-12,
          );
        });
      }),
    );
  });

  it("round half a cent of the total up, as a worksheet does", () => {
    expect(shareOut(1.005, [1])).toEqual([1.01]);
    expect(shareOut(-1.005, [1])).toEqual([-1.01]);
    expect(shareOut(8.165, [1, 1])).toEqual([4.09, 4.08]);
  });

  it("give nothing to a weight of zero when the cents divide evenly", () => {
    expect(shareOut(10, [1, 0, 1])).toEqual([5, 0, 5]);
  });
});
