import { describe, expect, it } from "vitest";

import { toSi } from "../../../../src/core/units/convert.ts";
import { unitBySymbol } from "../../../../src/core/units/find-unit.ts";
import { hardness } from "../../../../src/core/units/quantity.ts";
import type { HardnessScheme } from "../../../../src/core/water/hardness-class.ts";
import { hardnessClass } from "../../../../src/core/water/hardness-class.ts";

const classOf = (value: number, unit: string, scheme: HardnessScheme) =>
  hardnessClass(hardness(toSi(value, unitBySymbol(unit, "hardness"))), scheme);

describe("hardness classes", () => {
  it.each([
    [0, "soft"],
    [60, "soft"],
    [60.5, "moderately hard"],
    [120, "moderately hard"],
    [121, "hard"],
    [180, "hard"],
    [181, "very hard"],
  ])("of the USGS put %d mg/L at %s", (value, name) => {
    expect(classOf(value, "mg/L CaCO3", "USGS")).toBe(name);
  });

  it.each([
    [0.99, "soft"],
    [1, "slightly hard"],
    [3.5, "slightly hard"],
    [3.6, "moderately hard"],
    [7, "moderately hard"],
    [10.5, "hard"],
    [10.6, "very hard"],
  ])("of the Water Quality Association put %d gpg at %s", (value, name) => {
    expect(classOf(value, "gpg", "WQA")).toBe(name);
  });
});
