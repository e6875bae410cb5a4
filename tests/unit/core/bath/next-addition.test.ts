import { describe, expect, it } from "vitest";

import type { Bath } from "../../../../src/core/bath/bath.ts";
import { usualTolerance } from "../../../../src/core/bath/common-practice.ts";
import { builderFromWord, unknownBuilder } from "../../../../src/core/bath/model/builder.ts";
import { nextAddition } from "../../../../src/core/bath/next-addition.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { alkalinity, cubicMeters, kelvin, ph } from "../../../../src/core/units/quantity.ts";

const added = cubicMeters(1);
const opened: Bath = {
  baseline: ph(11.3),
  temperature: kelvin(celsiusZero + 45),
  builder: unknownBuilder,
  alkalinity: alkalinity(0.1),
};
const next = (before: number, after: number, bath = opened, tolerance = usualTolerance): number =>
  nextAddition(added, { before: ph(before), after: ph(after) }, bath, tolerance);

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
    expect(next(10.83, 10.86)).toBeGreaterThan(0);
  });

  it("of plain hydroxide is the hydroxide missing over the hydroxide gained, but for ions and volume", () => {
    const plain = { ...opened, builder: builderFromWord("hydroxide"), alkalinity: alkalinity(0) };
    const linear = (10 ** 11.3 - 10 ** 11) / (10 ** 11 - 10 ** 10.8);
    expect(Math.abs(next(10.8, 11, plain) / linear - 1)).toBeLessThan(0.06);
  });

  it("shrinks the better the bath answers", () => {
    const answers = [10.9, 11, 11.1, 11.15].map((after) => next(10.8, after));
    expect(answers).toEqual([...answers].sort((first, second) => second - first));
  });
});
