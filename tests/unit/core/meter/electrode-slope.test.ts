import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { electrodeSlope } from "../../../../src/core/meter/electrode-slope.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";

function percent(first: readonly [number, number], second: readonly [number, number], celsius = 25): number {
  const [one, other] = [first, second].map(([buffer, millivolts]) => ({ ph: ph(buffer), millivolts })) as [Pair, Pair];
  return 100 * electrodeSlope(one, other, kelvin(celsiusZero + celsius));
}
type Pair = Parameters<typeof electrodeSlope>[0];

describe("the slope of an electrode", () => {
  it.each([
    [25, 59.16, 0.005],
    [0, 54.2, 0.01],
    [50, 64.12, 0.01],
  ])("is 100 % at %d °C for the theoretical %d mV that guides print", (celsius, millivolts, tolerance) => {
    expect(Math.abs(percent([7, 0], [8, -millivolts], celsius) - 100)).toBeLessThanOrEqual(
      (100 * tolerance) / millivolts,
    );
  });

  it.each([
    [7, -5, 10, -165, 90.15, 0.02],
    [7.01, -15, 4.01, 160, 98.6, 0.05],
    [7.01, 15, 4.01, 160, 81.7, 0.05],
  ])(
    "between pH %d at %d mV and pH %d at %d mV is %d %, as guides print",
    (buffer1, mv1, buffer2, mv2, printed, tolerance) => {
      expect(Math.abs(percent([buffer1, mv1], [buffer2, mv2]) - printed)).toBeLessThanOrEqual(tolerance);
    },
  );

  it("is the same with the meter's sign turned around and the buffers swapped", () => {
    expect(percent([7, 5], [10, 165])).toBe(percent([7, -5], [10, -165]));
    expect(percent([10, -165], [7, -5])).toBeCloseTo(percent([7, -5], [10, -165]), 10);
  });

  it("needs two buffers and two potentials", () => {
    expect(() => percent([7, 0], [7, -170])).toThrow(/same pH/);
    expect(() => percent([7, 0], [10, 0])).toThrow(/mV 1 and mV 2 are the same/);
  });

  it.each([
    [[0 - 1, 0], [10, -170], 25],
    [[7, 0], [15, -170], 25],
    [[7, 0], [10, -2001], 25],
    [[7, 0], [10, -170], 90],
  ] as const)("refuses %j and %j at %d °C", (one, other, celsius) => {
    expect(() => percent(one, other, celsius)).toThrow(OutOfRange);
  });
});
