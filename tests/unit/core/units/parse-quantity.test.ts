import { describe, expect, it } from "vitest";

import { defaultUnit } from "../../../../src/core/units/default-unit.ts";
import { parseQuantity } from "../../../../src/core/units/parse-quantity.ts";
import type { QuantityKind } from "../../../../src/core/units/quantity.ts";
import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";

const read = (text: string, kind: QuantityKind, system: UnitSystem = "US") =>
  parseQuantity(text, kind, system, defaultUnit(kind, system));

function si(text: string, kind: QuantityKind, system?: UnitSystem): number {
  const reading = read(text, kind, system);
  if (reading.read !== "quantity") throw new RangeError(`${text} read as ${reading.read}`);
  return reading.si;
}

const usGallon = 0.003785411784;
const imperialGallon = 0.00454609;

describe("quantities in text", () => {
  it.each([
    ["60 gal", 60 * usGallon],
    ["60GAL.", 60 * usGallon],
    ["5 gallons", 5 * usGallon],
    ["1 1/2 gal", 1.5 * usGallon],
    ["½ gal", 0.5 * usGallon],
    ["60 gal (US)", 60 * usGallon],
    ["2 imp gal", 2 * imperialGallon],
    ["16 fl. oz.", usGallon / 8],
    ["2 qts", usGallon / 2],
    ["1 cup", usGallon / 16],
    ["227 litres", 0.227],
    ["1 500 L", 1.5],
    ["250 ml", 0.00025],
    ["60", 60 * usGallon],
    ["1½ gal", 1.5 * usGallon],
    ["1-1/2 gal", 1.5 * usGallon],
    ["1 1⁄2gal", 1.5 * usGallon],
    ["1,5 L", 0.0015],
    ["1,5l", 0.0015],
    ["1.500,5 L", 1.5005],
    ["1 500,5 L", 1.5005],
    ["1'500 L", 1.5],
    ["1,00,000 mL", 0.1],
    ["227\u00a0L", 0.227],
    ["２２７　Ｌ", 0.227],
    ["1.5e3 L", 1.5],
    ["1.5×10³ L", 1.5],
    ["250 ㎖", 0.00025],
    ["2 m³", 2],
    ["2 m3", 2],
    ["10 ℓ", 0.01],
  ])("reads %s as a volume", (text, cubicMeters) => {
    expect(si(text, "volume")).toBeCloseTo(cubicMeters, 12);
  });

  it("lets a bare gallon and fluid ounce follow the system", () => {
    expect(si("60 gal", "volume", "imperial")).toBeCloseTo(60 * imperialGallon, 12);
    expect(si("160 fl oz", "volume", "imperial")).toBeCloseTo(imperialGallon, 12);
    expect(read("60 gal", "volume", "metric")).toEqual({ read: "undecided", choices: ["US gal", "imperial gal"] });
  });

  it("lets a written unit win over the system", () => {
    expect(si("60 US gal", "volume", "imperial")).toBeCloseTo(60 * usGallon, 12);
    expect(si("227 L", "volume", "US")).toBeCloseTo(0.227, 12);
  });

  it.each([
    ["131 °F", 328.15],
    ["131F", 328.15],
    ["55 C", 328.15],
    ["55 deg C", 328.15],
    ["0 C", 273.15],
    ["-40 F", 233.15],
    ["−40 °F", 233.15],
    ["131 F", 328.15],
    ["55C", 328.15],
    ["55 °C", 328.15],
    ["55 ℃", 328.15],
    ["131℉", 328.15],
    ["５５℃", 328.15],
    ["55 ºC", 328.15],
    ["54,4 °C", 327.55],
  ])("reads %s as a temperature", (text, kelvin) => {
    expect(si(text, "temperature")).toBeCloseTo(kelvin, 9);
  });

  it("reads the laboratory's units of hardness alike in every system", () => {
    for (const system of ["US", "metric", "imperial"] as const) {
      expect(si("100.0869", "hardness", system)).toBeCloseTo(1, 9);
      expect(si("2 meq/L", "hardness", system)).toBeCloseTo(1, 9);
      expect(si("5.6077 °dH", "hardness", system)).toBeCloseTo(1, 9);
      expect(si("0.5 gpg", "hardness", system)).toBeCloseTo((0.5 * 17.118) / 100.0869, 5);
      expect(si("0,5 gpg", "hardness", system)).toBeCloseTo((0.5 * 17.118) / 100.0869, 5);
      expect(si("18 °dH", "hardness", system)).toBeCloseTo(18 / 5.6077, 4);
      expect(si("4.8 meq/L", "alkalinity", system)).toBeCloseTo(4.8, 9);
      expect(si("18 gpg", "hardness", system)).toBeCloseTo((18 * 17.118) / 100.0869, 4);
    }
  });

  it("says which kind a unit of another kind is", () => {
    expect(read("60 °F", "volume")).toMatchObject({ read: "other kind", unit: { kind: "temperature" } });
    expect(read("8 oz", "volume")).toMatchObject({ read: "other kind", unit: { kind: "mass" } });
  });

  it("takes an apostrophe or a prime for feet unless three digits follow", () => {
    expect(si("5'", "length")).toBeCloseTo(5 * 0.3048, 12);
    expect(si("5’", "length")).toBeCloseTo(5 * 0.3048, 12);
    expect(si('24"', "length")).toBeCloseTo(24 * 0.0254, 12);
    expect(si("1'500 mm", "length")).toBeCloseTo(1.5, 12);
  });

  it("gives both readings of an ambiguous comma, and the unit", () => {
    expect(read("1,500 gal", "volume")).toEqual({ read: "ambiguous", readings: [1.5, 1500], rest: "gal" });
    expect(read("１，５００　Ｌ", "volume")).toEqual({ read: "ambiguous", readings: [1.5, 1500], rest: "L" });
  });

  it("does not take the unit °e for a power of ten", () => {
    expect(si("5 °e", "hardness")).toBeCloseTo((5 * 14.254) / 100.0869, 4);
    expect(read("5e", "hardness")).toEqual({ read: "unknown unit", word: "e" });
  });

  it.each(["5-10 gal", "5'6", "1/2/3 gal", "1,50,0 gal", "$4 /gal", "gal 5"])(
    "does not read “%s” as a volume",
    (text) => {
      expect(["nothing", "unknown unit"]).toContain(read(text, "volume").read);
    },
  );

  it("reads nothing in words without a number, and names a unit that it does not know", () => {
    expect(read("gal", "volume")).toEqual({ read: "nothing" });
    expect(read("60 firkins", "volume")).toEqual({ read: "unknown unit", word: "firkins" });
  });
});
