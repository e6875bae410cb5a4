import { describe, expect, it } from "vitest";

import { corrosive } from "../../../../src/core/discharge/corrosive.ts";
import { placeAmongLimits } from "../../../../src/core/discharge/release-limits.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";

const place = (reading: number, low: number, high: number, celsius?: number): string =>
  placeAmongLimits(
    ph(reading),
    { low: ph(low), high: ph(high) },
    celsius === undefined ? undefined : kelvin(celsiusZero + celsius),
  );

describe("a waste", () => {
  // 40 CFR 261.22(a)(1).
  it.each([
    [0, true],
    [2, true],
    [2.01, false],
    [7, false],
    [12.49, false],
    [12.5, true],
    // 12.5 to within the rounding of a subtraction.
    [12.499999999999998, true],
    [14.5, true],
  ])("of pH %d is corrosive in federal law: %s", (reading, expected) => {
    expect(corrosive(ph(reading), 0.001)).toBe(expected);
  });

  // Less than 0.1 from a limit no meter decides; common practice, no source.
  it.each([
    [2.09, true],
    [2.1, false],
    [12.4, false],
    [12.41, true],
    [12.4999, true],
  ])("of pH %d counts as corrosive without a margin given: %s", (reading, expected) => {
    expect(corrosive(ph(reading))).toBe(expected);
  });

  it("takes no margin of nothing or of more than one", () => {
    for (const margin of [0, 1.1]) expect(() => corrosive(ph(7), margin)).toThrow(OutOfRange);
  });

  it("has no pH beyond the scale", () => {
    expect(() => corrosive(ph(15))).toThrow(OutOfRange);
  });
});

describe("a reading among a shop's limits", () => {
  it.each([
    // 40 CFR 403.5(b)(2): no discharge below 5.0.
    [4.9, 5, 9, "below"],
    [5, 5, 9, "within"],
    [9, 5, 9, "within"],
    [9.01, 5, 9, "above"],
  ])("of pH %d in %d to %d is %s", (reading, low, high, expected) => {
    expect(place(reading, low, high)).toBe(expected);
  });

  it.each([
    [4.99, 9],
    [6, 12.41],
    [6, 12.5],
  ])("has no limits of %d to %d: under the federal floor, or at hazardous waste", (low, high) => {
    expect(() => place(8, low, high)).toThrow(OutOfRange);
  });

  it("is judged up to 104 °F, which is 40 °C, and not hotter, whatever it reads", () => {
    const limit = kelvin((104 + 459.67) / 1.8);
    expect(placeAmongLimits(ph(8), { low: ph(6), high: ph(11) }, kelvin(Math.round(limit * 1e9) / 1e9))).toBe("within");
    expect(place(8, 6, 11, 40)).toBe("within");
    for (const reading of [4, 8, 12]) expect(() => place(reading, 6, 11, 40.1)).toThrow(OutOfRange);
    expect(() => place(8, 6, 11, -1)).toThrow(OutOfRange);
  });

  it("needs a low limit below the high one", () => {
    expect(() => place(8, 9, 5)).toThrow(/wrong way/);
    expect(() => place(8, 8, 8)).toThrow(/wrong way/);
  });
});
