import { describe, expect, it } from "vitest";

import { constantsInUse, numbersIn, writtenIn } from "./constants-in-use.ts";
import type { ConstantRow } from "./constants-table.ts";
import { constantRows, countConstants } from "./constants-table.ts";

const key = ({ module, constant, part }: Pick<ConstantRow, "module" | "constant" | "part">): string =>
  `${module}: ${constant}, ${part}`;

/** How near a figure must be to count as the same: half of its last digit, or what its copies differ by. */
function sameWithin({ part, ours }: ConstantRow): number {
  if (part === "log K") return 0.005;
  if (part === "enthalpy") return 0.05; // kJ/mol
  if (part.startsWith("enthalpy at")) return 0.005; // kJ/kg
  if (part.startsWith("pH(S)")) return 0.001;
  if (part.startsWith("density at")) return 0.0006 * ours;
  if (part === "atomic weight") return 0.0005;
  return 1e-6 * Math.abs(ours);
}

const lastBits = 1e-9;

describe("the table of constants", () => {
  it("differs from its copies in the densities of acetic acid alone, by at most 0.2 %", () => {
    for (const row of constantRows.filter(({ status }) => status === "differs")) {
      expect(key(row)).toMatch(/^discharge\/acid-products: acetic, density/);
      expect(Math.abs(row.ours / (row.public ?? Number.NaN) - 1)).toBeLessThanOrEqual(0.00201);
    }
  });

  const known = new Map(constantRows.map((row) => [key(row), row]));

  it("has each constant once", () => {
    expect(known.size).toBe(constantRows.length);
  });

  it("holds every constant that the code has as data, with the code's figure", () => {
    expect(constantsInUse.length).toBeGreaterThan(200);
    for (const used of constantsInUse) {
      expect(known.get(key(used))?.ours, key(used)).toBeCloseTo(used.value, 9);
    }
  });

  it("holds no constant of that data that the code lacks", () => {
    const used = new Set(constantsInUse.map(key));
    const modules = new Set(constantsInUse.map(({ module }) => module));
    const stale = constantRows.filter((row) => modules.has(row.module) && !used.has(key(row)));
    expect(stale.map(key)).toEqual([]);
    const everywhere = new Set<string>([...modules, ...writtenIn]);
    expect(constantRows.filter(({ module }) => !everywhere.has(module)).map(key)).toEqual([]);
  });

  /** Counts, powers and the thousand of a prefix are no constants of nature. */
  const structural = new Set([0, 0.001, 1, 2, 3, 1000]);
  const celsius = (row: ConstantRow): number => Number(/ at (\d+) °C/.exec(row.part)?.[1] ?? Number.NaN);

  it.each(writtenIn)("holds every number that %s writes into its formulas, and no other", (module) => {
    const rows = constantRows.filter((row) => row.module === module);
    const listed = new Set(rows.flatMap((row) => [Math.abs(row.ours), celsius(row)]));
    const written = numbersIn(module);
    expect(written.filter((number) => !structural.has(number) && !listed.has(number))).toEqual([]);
    expect(rows.filter((row) => !written.includes(Math.abs(row.ours))).map(key)).toEqual([]);
  });

  it("says of each what its figures say: confirmed, differs, or nothing to hold it to", () => {
    for (const row of constantRows) {
      const off = row.public === undefined ? Number.NaN : Math.abs(row.ours - row.public);
      const found = off <= sameWithin(row) + lastBits ? "confirmed" : "differs";
      expect(row.status, key(row)).toBe(row.public === undefined ? "from memory" : found);
    }
  });

  it("names the collection and the place of every public figure", () => {
    for (const row of constantRows) {
      const isPublic = row.public !== undefined;
      expect(row.collection !== "", key(row)).toBe(isPublic);
      expect(row.place !== "", key(row)).toBe(isPublic);
    }
  });

  it("has 7 in 8 of its constants confirmed, and none of those that set a bath's pH differs", () => {
    const { constants, byStatus, confirmedBy } = countConstants(constantRows);
    expect(byStatus.confirmed + byStatus.differs + byStatus["from memory"]).toBe(constants);
    expect(byStatus.confirmed / constants).toBeGreaterThan(7 / 8);
    expect(confirmedBy.reduce((sum, [, count]) => sum + count, 0)).toBe(byStatus.confirmed);
    expect(
      constantRows.filter(({ module, status }) => module.startsWith("chemistry/") && status === "differs").map(key),
    ).toEqual([]);
  });
});
