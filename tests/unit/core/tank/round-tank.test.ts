import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { roundTankVolume } from "../../../../src/core/tank/round-tank.ts";
import { inch, usGallon } from "../../../../src/core/units/exact-constants.ts";
import type { Meters } from "../../../../src/core/units/quantity.ts";
import { cubicMeters } from "../../../../src/core/units/quantity.ts";

const inches = (value: number): Meters => (value * inch) as Meters;
const gallons = (diameter: number, depth: number, displaced = 0): number =>
  roundTankVolume({
    diameter: inches(diameter),
    depth: inches(depth),
    displacement: cubicMeters(displaced * usGallon),
  }) / usGallon;

describe("a round tank", () => {
  it("of 24 by 20 inches holds 39.17 US gallons (Henley's formula book)", () => {
    expect(Math.abs(gallons(24, 20) - 39.17)).toBeLessThanOrEqual(0.01);
  });

  it("of 16 by 2 feet holds 3008.1 US gallons, not 2988.48", () => {
    expect(Math.abs(gallons(192, 24) - 3008.1)).toBeLessThanOrEqual(0.05);
  });

  it("holds less by what racks and load take up", () => {
    expect(gallons(24, 20) - gallons(24, 20, 3.5)).toBeCloseTo(3.5, 10);
  });

  it.each([
    [0, 20, 0],
    [24, -1, 0],
    [24, 20, 40],
    [24, 20, -1],
  ])("of %d by %d inches with %d gallons taken up is refused", (diameter, depth, displaced) => {
    expect(() => gallons(diameter, depth, displaced)).toThrow(OutOfRange);
  });
});
