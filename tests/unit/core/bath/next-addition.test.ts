import { describe, expect, it } from "vitest";

import type { Bath } from "../../../../src/core/bath/bath.ts";
import { usualMeterAccuracy, usualTolerance } from "../../../../src/core/bath/common-practice.ts";
import { builderFromWord, unknownBuilder } from "../../../../src/core/bath/model/builder.ts";
import { nextAddition } from "../../../../src/core/bath/next-addition.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { alkalinity, cubicMeters, kelvin, ph } from "../../../../src/core/units/quantity.ts";

const added = cubicMeters(1);
const opened: Bath = {
  baseline: ph(11.3),
  temperature: kelvin(celsiusZero + 45),
  builder: unknownBuilder,
  alkalinity: alkalinity(0.1),
};
const wide = { accuracy: usualMeterAccuracy, openingDose: cubicMeters(100), houseShare: 1 };
const next = (before: number, after: number, bath = opened, tolerance = usualTolerance): number =>
  nextAddition(added, { before: ph(before), after: ph(after) }, bath, { ...wide, tolerance });

describe("the next addition", () => {
  it("is nothing once the bath is within a tenth of its baseline, or above it (common practice, no source)", () => {
    expect(next(10.8, 11.2)).toBe(0);
    expect(next(11.19, 11.2)).toBe(0);
    expect(next(10.8, 11.5)).toBe(0);
    expect(next(10.8, 11.19)).toBeGreaterThan(0);
  });

  it("is nothing, or something, by the shop's own tolerance where it has one", () => {
    expect(next(10.8, 11.2, opened, 0.05)).toBeGreaterThan(0);
    expect(next(10.8, 11.25, opened, 0.05)).toBe(0);
    expect(next(10.8, 11.1, opened, 0.2)).toBe(0);
  });

  it("sends the person to meter, temperature, mixing and water where the bath hardly answered", () => {
    const refusal = expect.objectContaining({ refusal: "no-answer" }) as Error;
    expect(() => next(10.8, 10.82)).toThrow(refusal);
    expect(() => next(10.8, 10.7)).toThrow(/meter, temperature, mixing and water/);
    expect(() => next(10.83, 10.93)).toThrow(/by 0.10 pH, and two readings of one bath can differ by 0.10/);
    expect(next(10.83, 10.94)).toBeGreaterThan(0);
    const fine = { ...wide, accuracy: 0.01, tolerance: usualTolerance };
    expect(nextAddition(added, { before: ph(10.83), after: ph(10.86) }, opened, fine)).toBeGreaterThan(0);
  });

  it("is never more than the house's share of the opening dose, nor than was added last where that is not known", () => {
    const answered = { before: ph(10.8), after: ph(10.95) };
    const practice = { ...wide, tolerance: usualTolerance };
    expect(nextAddition(added, answered, opened, practice)).toBeGreaterThan(3);
    const third = { ...practice, openingDose: cubicMeters(6), houseShare: 1 / 3 };
    expect(nextAddition(added, answered, opened, third)).toBeCloseTo(2, 12);
    expect(nextAddition(added, answered, opened, { ...third, openingDose: undefined })).toBe(1);
  });

  it("has no baseline at hazardous waste to go to", () => {
    const strong = { ...opened, baseline: ph(12.5) };
    expect(() => next(11, 11.5, strong)).toThrow(OutOfRange);
  });

  it("of plain hydroxide is the hydroxide missing over the hydroxide gained, but for ions and volume", () => {
    const plain = { ...opened, builder: builderFromWord("hydroxide"), alkalinity: alkalinity(0) };
    const linear = (10 ** 11.3 - 10 ** 11) / (10 ** 11 - 10 ** 10.8);
    expect(Math.abs(next(10.8, 11, plain) / linear - 1)).toBeLessThan(0.06);
  });

  it("shrinks the better the bath answers", () => {
    const answers = [10.95, 11, 11.1, 11.15].map((after) => next(10.8, after));
    expect(answers).toEqual([...answers].sort((first, second) => second - first));
  });
});
