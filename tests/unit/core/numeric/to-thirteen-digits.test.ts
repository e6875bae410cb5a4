import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { toThirteenDigits } from "../../../../src/core/numeric/to-thirteen-digits.ts";

describe("a number to thirteen figures", () => {
  it("loses the noise of a calculation", () => {
    expect(toThirteenDigits(31.99999999999994)).toBe(32);
    expect(toThirteenDigits(-0.1 - 0.2)).toBe(-0.3);
    expect(toThirteenDigits(0)).toBe(0);
  });

  it("is within half a unit of its thirteenth figure, at any size", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(Math.abs(toThirteenDigits(value) - value)).toBeLessThanOrEqual(
          Math.abs(value) * 5.001e-13 + Number.MIN_VALUE,
        );
      }),
    );
  });

  it("keeps a number that has no more figures, to the last bit", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e15 }), fc.integer({ min: 1, max: 13 }), (value, count) => {
        const short = Number(value.toPrecision(count));
        expect(toThirteenDigits(short)).toBe(short);
        expect(toThirteenDigits(-short)).toBe(-short);
      }),
    );
  });
});
