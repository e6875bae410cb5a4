import { describe, expect, it } from "vitest";

import { chemicals } from "../../../../src/core/chemistry/chemicals/chemicals.ts";
import { compositionOfMoles, compositionOfWeights } from "../../../../src/core/chemistry/chemicals/composition-of.ts";
import { findChemical } from "../../../../src/core/chemistry/chemicals/find-chemical.ts";
import { molarMass } from "../../../../src/core/chemistry/chemicals/molar-mass.ts";
import { composition } from "../../../../src/core/chemistry/composition.ts";

/** g/mol as printed in the CRC Handbook of Chemistry and Physics; from memory. */
const printed: readonly (readonly [string, number])[] = [
  ["NaOH", 39.997],
  ["KOH", 56.106],
  ["Ca(OH)2", 74.093],
  ["Na2CO3", 105.989],
  ["Na2SiO3", 122.064],
  ["Na3PO4", 163.941],
  ["Na2B4O7", 201.22],
  ["C6H8O7", 192.124],
  ["C2H7NO", 61.083],
  ["Na2B4O7(H2O)10", 381.372],
  ["C10H16N2O8", 292.242],
];

describe("the substances", () => {
  it.each(printed)("weigh what the handbook prints: %s", (formula, grams) => {
    expect(Math.abs(molarMass(formula) - grams)).toBeLessThanOrEqual(0.01);
  });

  it("all have a molar mass", () => {
    for (const one of chemicals) expect(molarMass(one.weighedAs ?? one.formula)).toBeGreaterThan(17);
  });

  it("have no word in common", () => {
    const words = chemicals.flatMap((one) => [one.formula, one.name, ...one.spellings]);
    expect(new Set(words.map((word) => word.toLowerCase())).size).toBe(words.length);
  });

  it.each(["NaOH", "naoh", "Sodium Hydroxide", " caustic soda ", "sodium-hydroxide"])("answer to %s", (word) => {
    expect(findChemical(word).formula).toBe("NaOH");
  });

  it("refuse an unknown name and list the known ones", () => {
    expect(() => findChemical("fairy dust")).toThrow(
      /“fairy dust” is not a component this chemistry knows\. .*NaOH, KOH/,
    );
  });

  it.each(["sodium hydroxid", "nitric acid", "hydrofluoric acid", "NaOCl"])("never guess what “%s” may be", (word) => {
    expect(() => findChemical(word)).toThrow(
      /is not a component this chemistry knows\. Known, by formula or name: NaOH/,
    );
  });
});

describe("a list of ingredients", () => {
  it("adds up to totals of components", () => {
    const totals = compositionOfMoles([
      { chemical: "NaOH", amount: 0.5 },
      { chemical: "borax", amount: 0.01 },
      { chemical: "MgCl2", amount: 0.001 },
    ]);
    expect(totals).toEqual(composition({ sodium: 0.52, borate: 0.04, magnesium: 0.001, chloride: 0.002 }));
  });

  it("counts weights by molar mass, crystal water included, and water not at all", () => {
    const totals = compositionOfWeights([
      { chemical: "Na2SiO3·5H2O", amount: 21.2137 },
      { chemical: "Water", amount: 70 },
    ]);
    expect(totals.silicate).toBeCloseTo(0.1, 4);
    expect(totals.sodium).toBeCloseTo(0.2, 4);
  });

  it("refuses an amount that is negative or no number", () => {
    expect(() => compositionOfMoles([{ chemical: "NaOH", amount: -1 }])).toThrow(/NaOH is -1/);
    expect(() => compositionOfWeights([{ chemical: "NaOH", amount: Number.NaN }])).toThrow(/NaOH is NaN/);
  });
});
