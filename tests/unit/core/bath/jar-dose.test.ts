import { describe, expect, it } from "vitest";

import { jarDose } from "../../../../src/core/bath/jar-dose.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { cubicMeters, volumeFraction } from "../../../../src/core/units/quantity.ts";

const dose = (volume: number, inThisWater: number, inReference: number, labelStrength: number): number =>
  jarDose(cubicMeters(volume), { inThisWater, inReference }, volumeFraction(labelStrength));

describe("a dose by jar test", () => {
  it("is the label's where both waters pass alike", () => {
    expect(dose(0.41, 2, 2, 1 / 41)).toBeCloseTo(0.01, 15);
  });

  it("is half as much again where the water takes 3 for the reference's 2", () => {
    expect(dose(0.41, 3, 2, 1 / 41)).toBeCloseTo(0.015, 15);
  });

  it("may fill half the bath but not more", () => {
    expect(dose(1, 2, 1, 0.25)).toBe(0.5);
    expect(() => dose(1, 2.1, 1, 0.25)).toThrow(/more concentrate than water/);
  });

  it.each([
    [0, 3, 2, 0.02],
    [1, 0, 2, 0.02],
    [1, 3, 0, 0.02],
    [1, 3, 2, 0],
    [1, 3, 2, 1.5],
  ])("of %d with %d, %d and %d is refused", (volume, inThisWater, inReference, labelStrength) => {
    expect(() => dose(volume, inThisWater, inReference, labelStrength)).toThrow(OutOfRange);
  });
});
