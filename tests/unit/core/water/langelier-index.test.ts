import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { alkalinity, hardness, kelvin, kilogramsPerCubicMeter, ph } from "../../../../src/core/units/quantity.ts";
import { langelierIndex } from "../../../../src/core/water/langelier-index.ts";

interface Water {
  readonly ph: number;
  readonly celsius: number;
  /** As calcium carbonate, mg/L. */
  readonly calcium: number;
  readonly alkalinity: number;
  readonly solids: number;
}

const printed: Water = { ph: 7.5, celsius: 25, calcium: 150, alkalinity: 34, solids: 320 };

const index = (water: Partial<Water>): number => {
  const all = { ...printed, ...water };
  return langelierIndex({
    ph: ph(all.ph),
    temperature: kelvin(all.celsius + 273.15),
    calciumHardness: hardness(all.calcium / 100.0869),
    alkalinity: alkalinity((2 * all.alkalinity) / 100.0869),
    dissolvedSolids: kilogramsPerCubicMeter(all.solids / 1000),
  });
};

/** With these A, C and D are 0, so that what is left is pH − 9.3 − B. */
const bare: Partial<Water> = { ph: 9.3, solids: 10, calcium: 10 ** 0.4, alkalinity: 1 };

describe("the Langelier index", () => {
  it("of the widely reprinted example is -0.7", () => {
    expect(Math.abs(index({}) - -0.7)).toBeLessThanOrEqual(0.05);
  });

  it("of the same water at 82 °C is 0.3 (printed with the example, from memory)", () => {
    expect(Math.abs(index({ celsius: 82 }) - 0.3)).toBeLessThanOrEqual(0.05);
  });

  it.each([
    ["A of 0.15", { solids: 320 }, -0.15],
    ["C of 1.78", { calcium: 150 }, 1.78],
    ["D of 1.53", { alkalinity: 34 }, 1.53],
  ])("has the example's %s", (_term, water, change) => {
    expect(Math.abs(index({ ...bare, ...water }) - index(bare) - change)).toBeLessThanOrEqual(0.005);
  });

  it("has the example's B of 2.09", () => {
    expect(Math.abs(index(bare) - -2.09)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    { ph: 11 },
    { ph: 4 },
    { celsius: -1 },
    { celsius: 101 },
    { calcium: 0 },
    { alkalinity: 0 },
    { solids: 5 },
    { solids: 20_000 },
  ])("is refused for %j", (water) => {
    expect(() => index(water)).toThrow(OutOfRange);
  });
});
