import { describe, expect, it } from "vitest";

import { parseStrength } from "../../../../src/core/units/parse-strength.ts";

function fraction(text: string, system: "US" | "metric" | "imperial" = "US"): number {
  const reading = parseStrength(text, system);
  if (reading.read !== "strength") throw new RangeError(`${text} read as ${reading.read}`);
  return reading.fraction;
}

describe("strengths in text", () => {
  it.each([
    ["1+40", 1 / 41],
    ["1 + 40", 1 / 41],
    ["1:40", 1 / 41],
    ["１：４０", 1 / 41],
    ["1∶40", 1 / 41],
    ["１＋４０", 1 / 41],
    ["1 to 40", 1 / 41],
    ["1 part to 40 parts of water", 1 / 41],
    ["2+3", 2 / 5],
    ["1 in 40", 1 / 40],
    ["1 part in 40", 1 / 40],
    ["2.5%", 0.025],
    ["2,5 %", 0.025],
    ["2.5\u00a0% v/v", 0.025],
    ["2½ percent", 0.025],
    ["２．５％", 0.025],
    ["3 fl oz/gal", 3 / 128],
    ["3 fl. oz. per gallon", 3 / 128],
    ["1 1/2 fl oz/gal", 1.5 / 128],
    ["1½ fl oz/gal", 1.5 / 128],
    ["3 fl oz/5 gal", 3 / 640],
    ["3 fl oz to 1 gal", 3 / 131],
    ["3 fl oz to a gallon", 3 / 131],
    ["25 mL/L", 0.025],
    ["25 ml per litre", 0.025],
    ["25 L/m³", 0.025],
    ["1 cup/gal", 1 / 16],
  ])("are read from %s", (text, expected) => {
    expect(fraction(text)).toBeCloseTo(expected, 12);
  });

  it.each(["3 oz/gal", "3oz/gal", "3 oz. per gallon", "3 ounces per gallon", "3 ozs/gal"])(
    "take the ounces of %s for fluid ounces",
    (text) => {
      expect(fraction(text)).toBeCloseTo(3 / 128, 12);
    },
  );

  it("take a bare ounce and gallon from the system", () => {
    expect(fraction("4 oz/gal", "imperial")).toBeCloseTo(4 / 160, 12);
    expect(fraction("4 imp oz/imp gal")).toBeCloseTo(4 / 160, 12);
    expect(parseStrength("3 oz/gal", "metric").read).toBe("undecided");
  });

  it.each([
    "3 oz wt/gal",
    "3 oz av/gal",
    "3 ounces (weight) per gal",
    "3 lb/gal",
    "25 g/L",
    "2.5 % w/w",
    "2.5 % by weight",
  ])("are not a weight, as in %s", (text) => {
    expect(parseStrength(text, "US")).toEqual({ read: "weight" });
  });

  it("leave a bare number, both readings of a comma and a reversed ratio to the caller", () => {
    expect(parseStrength("0,025", "US")).toEqual({ read: "number", value: 0.025 });
    expect(parseStrength("1,500 mL/L", "US")).toEqual({ read: "ambiguous", readings: [1.5, 1500] });
    expect(parseStrength("40:1", "US")).toEqual({ read: "reversed", parts: 40, water: 1 });
  });

  it("name a unit that is not known", () => {
    expect(parseStrength("3 galons/L", "US")).toEqual({ read: "unknown unit", word: "galons" });
  });

  it.each(["", "abc", "1/40", "1 gal", "3/gal", "gal", "0+40", "-1+40", "1+", "1:2:3", "25 ml"])(
    "are not read into “%s”",
    (text) => {
      expect(["nothing", "unknown unit"]).toContain(parseStrength(text, "US").read);
    },
  );
});
