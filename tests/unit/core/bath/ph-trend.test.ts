import fc from "fast-check";
import { describe, expect, it } from "vitest";

import type { TimedReading } from "../../../../src/core/bath/ph-trend.ts";
import { phTrend, timeUntilTrigger } from "../../../../src/core/bath/ph-trend.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import type { Point } from "../../../../src/core/numeric/theil-sen.ts";
import { theilSenSlope } from "../../../../src/core/numeric/theil-sen.ts";
import { ph } from "../../../../src/core/units/quantity.ts";

const points = (xs: readonly number[], ys: readonly number[]): Point[] =>
  xs.map((x, index) => ({ x, y: ys[index] ?? Number.NaN }));
const readings = (times: readonly number[], values: readonly number[]): TimedReading[] =>
  points(times, values).map(({ x, y }) => ({ time: x, reading: ph(y) }));

describe("the Theil–Sen slope", () => {
  it.each([
    [
      "one wild reading, in the style of USGS TM4-A3 chapter 10",
      [1, 2, 3, 4, 5, 6, 7],
      [1, 2, 3, 4, 5, 16, 7],
      1,
      1e-12,
    ],
    ["five readings, 0.2 and 0.5 in the middle of ten slopes by hand", [0, 1, 2, 4, 5], [6, 4, 1, 8, 7], 0.35, 1e-6],
    ["six readings, 15 pairwise slopes", [1, 2, 3, 4, 5, 6], [2, 3, 5, 4, 6, 8], 1, 1e-6],
  ])("of %s", (_what, xs, ys, slope, tolerance) => {
    expect(Math.abs((theilSenSlope(points(xs, ys)) ?? Number.NaN) - slope)).toBeLessThanOrEqual(tolerance);
  });

  it("leaves out pairs of one time, and needs one pair of two", () => {
    expect(theilSenSlope(points([1, 1, 2], [5, 7, 8]))).toBe(2);
    expect(theilSenSlope(points([3, 3, 3], [5, 7, 8]))).toBeUndefined();
    expect(theilSenSlope([])).toBeUndefined();
  });

  const whole = fc.array(
    fc.record({ x: fc.integer({ min: -1000, max: 1000 }), y: fc.integer({ min: -1000, max: 1000 }) }),
    { minLength: 2, maxLength: 20 },
  );

  it("does not depend on the order of the points, nor on where either axis begins", () => {
    const mixed = whole.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    fc.assert(
      fc.property(mixed, fc.integer({ min: -5000, max: 5000 }), ([given, shuffled], shift) => {
        const slope = theilSenSlope(given);
        expect(theilSenSlope(shuffled)).toBe(slope);
        expect(theilSenSlope(given.map(({ x, y }) => ({ x: x + shift, y: y - shift })))).toBe(slope);
      }),
    );
  });

  it("gains what is added to every point in proportion to x, and turns around with y", () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: -100, max: 100 }), (given, gain) => {
        const slope = theilSenSlope(given);
        if (slope === undefined) return;
        expect(theilSenSlope(given.map(({ x, y }) => ({ x, y: y + gain * x })))).toBeCloseTo(slope + gain, 9);
        expect(theilSenSlope(given.map(({ x, y }) => ({ x, y: -y })))).toBeCloseTo(-slope, 12);
      }),
    );
  });
});

describe("a trend of pH", () => {
  it("has no answer without two times, and is refused for more readings than it can pair", () => {
    expect(() => phTrend(readings([1, 1], [11, 10]))).toThrow(/two different times/);
    const many = Array.from({ length: 1001 }, (_each, index) => index + 1);
    expect(() =>
      phTrend(
        readings(
          many,
          many.map(() => 11),
        ),
      ),
    ).toThrow(/1001 pairs/);
    expect(
      phTrend(
        readings(
          many.slice(1),
          many.slice(1).map(() => 11),
        ),
      ),
    ).toBe(0);
  });

  it.each([
    [0, 11],
    [-1, 11],
    [1, 15],
    [1, -1],
  ])("is refused with a time of %d and pH %d", (time, reading) => {
    expect(() => phTrend(readings([time, 2], [reading, 11]))).toThrow(OutOfRange);
  });
});

describe("the time until the trigger", () => {
  const hours = [1, 2, 3, 4];

  it("is what lies above the trigger over the fall, from the latest reading whichever row it stands in", () => {
    expect(timeUntilTrigger(readings(hours, [11.4, 11.3, 11.2, 11.1]), ph(10.9))).toBeCloseTo(2, 9);
    expect(timeUntilTrigger(readings([4, 2, 1, 3], [11.1, 11.3, 11.4, 11.2]), ph(10.9))).toBeCloseTo(2, 9);
  });

  it("takes the middle of several readings at the latest time", () => {
    expect(timeUntilTrigger(readings([1, 2, 3, 4, 4, 4], [11.4, 11.3, 11.2, 11.1, 11.1, 9]), ph(11))).toBeCloseTo(1, 9);
  });

  it("is 0 at or below the trigger", () => {
    for (const trigger of [11.1, 11.2])
      expect(timeUntilTrigger(readings(hours, [11.4, 11.3, 11.2, 11.1]), ph(trigger))).toBe(0);
  });

  it.each([
    ["three readings", [1, 2, 3], [11.4, 11.3, 11.2], /3 readings/],
    ["a level pH", hours, [11.3, 11.3, 11.3, 11.3], /not falling/],
    ["a rising pH", hours, [11.1, 11.2, 11.3, 11.4], /not falling/],
    ["one time", [2, 2, 2, 2], [11.4, 11.3, 11.2, 11.1], /two different times/],
  ])("has no answer for %s", (_what, times, values, message) => {
    expect(() => timeUntilTrigger(readings(times, values), ph(10.9))).toThrow(
      expect.objectContaining({ refusal: "no-answer", message: expect.stringMatching(message) as string }) as Error,
    );
  });
});
