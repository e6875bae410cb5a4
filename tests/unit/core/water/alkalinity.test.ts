import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { alkalinity, cubicMeters } from "../../../../src/core/units/quantity.ts";
import { alkalinitySplit } from "../../../../src/core/water/alkalinity-split.ts";
import { titratedAlkalinity } from "../../../../src/core/water/titrated-alkalinity.ts";

const milliliters = (value: number) => cubicMeters(value * 1e-6);
const normal = (value: number) => alkalinity(value * 1000);
const titrated = (titrant: number, normality: number, sample: number) =>
  titratedAlkalinity(milliliters(titrant), normal(normality), milliliters(sample));
const split = (p: number, total: number): readonly number[] => {
  const { hydroxide, carbonate, bicarbonate } = alkalinitySplit(alkalinity(p), alkalinity(total));
  return [hydroxide, carbonate, bicarbonate];
};

describe("a titrated alkalinity", () => {
  it("is 0.084 eq/L for 8.4 mL of 0.1 N on 10 mL (mptc.saitechlabs.com: mL x N / mL)", () => {
    expect(titrated(8.4, 0.1, 10)).toBeCloseTo(84, 9);
  });

  it("comes within 0.1 % of mL × N × 50,000 / mL (Standard Methods 2320 B)", () => {
    const asCalciumCarbonate = (titrated(10, 0.02, 100) / 2) * 100.0869;
    expect(Math.abs(asCalciumCarbonate - 100)).toBeLessThanOrEqual(0.1);
  });

  it("is none where the sample took no acid", () => {
    expect(titrated(0, 0.02, 100)).toBe(0);
  });

  it.each([
    [-1, 0.02, 100],
    [10, 0, 100],
    [10, 0.02, 0],
    [10, 30, 100],
  ])("of %d mL at %d N on %d mL is refused", (titrant, normality, sample) => {
    expect(() => titrated(titrant, normality, sample)).toThrow(OutOfRange);
  });
});

describe("hydroxide, carbonate and bicarbonate by the table of Standard Methods 2320 B", () => {
  it.each([
    [50, 80, [20, 60, 0]],
    [40, 80, [0, 80, 0]],
    [80, 80, [80, 0, 0]],
    [20, 80, [0, 40, 40]],
    [0, 80, [0, 0, 80]],
    [0, 0, [0, 0, 0]],
  ])("for P %d and T %d are %j", (p, total, parts) => {
    expect(split(p, total)).toEqual(parts);
  });

  it("give 0.64 % sodium hydroxide and 0.424 % sodium carbonate for 20 and 24 mL of 0.5 N on 50 mL (factors of a brewery's detergent analysis)", () => {
    const [hydroxide = 0, carbonate = 0] = split(titrated(20, 0.5, 50), titrated(24, 0.5, 50));
    expect(Math.abs((hydroxide * 39.997) / 10_000 - 0.64)).toBeLessThanOrEqual(0.001);
    expect(Math.abs((carbonate * 52.994) / 10_000 - 0.424)).toBeLessThanOrEqual(0.001);
  });

  it("are exact where P and T miss each other, or a half, by a rounding", () => {
    const [justAbove, justAboveHalf] = [1.6000000000000003, 0.8000000000000002];
    expect(justAbove).toBeGreaterThan(1.6);
    expect(justAboveHalf).toBeGreaterThan(0.8);
    expect(split(justAbove, 1.6)).toEqual([1.6, 0, 0]);
    expect(split(justAboveHalf, 1.6)).toEqual([0, 1.6, 0]);
  });

  it.each([
    [90, 80],
    [-1, 80],
    [0, -1],
    [1, 0],
  ])("are refused for P %d and T %d", (p, total) => {
    expect(() => split(p, total)).toThrow(OutOfRange);
  });
});
