import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { toSi } from "../../../../src/core/units/convert.ts";
import { grain, usGallon } from "../../../../src/core/units/exact-constants.ts";
import { unitBySymbol } from "../../../../src/core/units/find-unit.ts";
import { hardness, kilograms, kilogramsPerCubicMeter } from "../../../../src/core/units/quantity.ts";
import { softenerLife } from "../../../../src/core/water/softener-life.ts";

const gallons = (grains: number, grainsPerGallon: number, iron = 0, ironFactor = 4): number =>
  softenerLife({
    capacity: kilograms(grains * grain),
    hardness: hardness(toSi(grainsPerGallon, unitBySymbol("gpg", "hardness"))),
    iron: kilogramsPerCubicMeter(iron / 1000),
    ironFactor,
  }) / usGallon;

describe("a softener", () => {
  it("of 8000 grains treats 727 gallons of 11 grains (portablewatersoftener.com)", () => {
    expect(Math.abs(gallons(8000, 11) - 727)).toBeLessThanOrEqual(0.5);
  });

  it("takes 18 grains with 1.5 mg/L of iron at a factor of 2 for 21 grains (cheresources.com)", () => {
    expect(21_000 / gallons(21_000, 18, 1.5, 2)).toBeCloseTo(21, 9);
  });

  it("of 15 120 grains lasts 3 days of 4 people at 60 gallons of 21 grains (the same)", () => {
    expect(gallons(15_120, 18, 1.5, 2) / (4 * 60)).toBeCloseTo(3, 9);
  });

  it("of 29 120 grains lasts a week of 320 gallons a day at 13 grains (esdwater.com)", () => {
    expect(gallons(29_120, 13) / 320).toBeCloseTo(7, 9);
  });

  it.each([
    [0, 11, 0, 4],
    [8000, 0, 1, 4],
    [8000, 11, -1, 4],
    [8000, 11, 1, 0],
    [8000, 11, 1, 20],
  ])("of %d grains at %d grains with %d mg/L of iron and a factor of %d is refused", (grains, hard, iron, factor) => {
    expect(() => gallons(grains, hard, iron, factor)).toThrow(OutOfRange);
  });
});
