import { describe, expect, it } from "vitest";

import { waterIonization } from "../../../src/core/chemistry/constants/water-ionization.ts";
import { kelvin } from "../../../src/core/units/quantity.ts";
import { potassiumHydroxidePH } from "./pitzer-hydroxide.ts";
import { databaseRows } from "./unmodified-databases.ts";

const rows = databaseRows();
const isDisputed = (bath: string): boolean => bath.startsWith("sodium carbonate") || bath.startsWith("borax");

const differencesOf = (disputed: boolean): readonly number[] =>
  rows
    .filter(({ bath }) => isDisputed(bath) === disputed)
    .flatMap(({ ours, others }) => others.flatMap((other) => (other === undefined ? [] : [other - ours])));

describe("databases with none of our constants in them", () => {
  it("give the pH of silicate and phosphate baths within 0.02 below and 0.08 above ours", () => {
    const differences = differencesOf(false);
    expect(differences.length).toBe(58);
    expect(Math.min(...differences)).toBeGreaterThan(-0.02);
    expect(Math.max(...differences)).toBeLessThan(0.08);
  });

  it("give sodium carbonate and borax within 0.2, ours between them", () => {
    const differences = differencesOf(true);
    expect(differences.length).toBe(24);
    expect(Math.min(...differences)).toBeGreaterThan(-0.2);
    expect(Math.max(...differences)).toBeLessThan(0.2);
    expect(Math.min(...differences) * Math.max(...differences)).toBeLessThan(0);
  });
});

describe("Pitzer's equation for potassium hydroxide", () => {
  it("gives what PHREEQC with pitzer.dat prints at 0.35 mol/kg and 25 °C", () => {
    expect(potassiumHydroxidePH(0.35, waterIonization(kelvin(298.15)))).toBeCloseTo(13.429, 3);
  });
});
