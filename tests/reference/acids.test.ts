import { describe, expect, it } from "vitest";

import { acidAmount } from "../../src/core/discharge/acid-amount.ts";
import { acidProducts } from "../../src/core/discharge/acid-products.ts";
import { alkalinity, cubicMeters } from "../../src/core/units/quantity.ts";

const sodiumHydroxide = 0.039997; // kg/mol

/** eq/L of a liquid acid. */
function normality(acid: "hydrochloric" | "sulfuric" | "acetic", percent: number): number {
  const liter = cubicMeters(0.001);
  const normal = alkalinity(1000);
  const liters = 20; // of bath, so that the acid is a small part of it
  const amount = acidAmount(acid, cubicMeters(liters * liter), alkalinity(normal / liters), percent);
  if (amount.form !== "liquid") throw new TypeError(`${acid} is a liquid`);
  return liter / amount.volume;
}

describe("the equivalents of acids", () => {
  it("are 0.9116 lb of hydrogen chloride to the lb of sodium hydroxide (36.461 / 39.997)", () => {
    expect(Math.abs(acidProducts.hydrochloric.perEquivalent / sodiumHydroxide - 0.9116)).toBeLessThanOrEqual(0.0005);
  });

  it("are 1.601 lb of citric acid to the lb of sodium hydroxide (64.04 / 39.997)", () => {
    expect(Math.abs(acidProducts.citric.perEquivalent / sodiumHydroxide - 1.601)).toBeLessThanOrEqual(0.001);
  });

  it("are 0.98 mg of sulfuric acid to the mg of alkalinity as calcium carbonate (49.04 / 50.04)", () => {
    expect(Math.abs(acidProducts.sulfuric.perEquivalent / 0.05004 - 0.98)).toBeLessThanOrEqual(0.0005);
  });

  it("make 93 % sulfuric acid 34.7 N (0.93 × 1830 / 49.04)", () => {
    expect(Math.abs(normality("sulfuric", 93) - 34.7)).toBeLessThanOrEqual(0.05);
  });

  it("make 31.45 % hydrochloric acid 10.0 N, and glacial acetic acid 17.5 N (laboratory tables)", () => {
    expect(Math.abs(normality("hydrochloric", 31.45) - 10)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(normality("acetic", 100) - 17.5)).toBeLessThanOrEqual(0.05);
  });

  it("make 36 % hydrochloric acid 11.6 to 12 N and vinegar of 5 % 0.84 N (laboratory tables)", () => {
    expect(normality("hydrochloric", 36)).toBeGreaterThan(11.55);
    expect(normality("hydrochloric", 36)).toBeLessThan(12);
    expect(Math.abs(normality("acetic", 5) - 0.84)).toBeLessThanOrEqual(0.01);
  });
});
