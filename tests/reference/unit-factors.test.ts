import { describe, expect, it } from "vitest";

import { callFormula } from "./call-formula.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";

/** Factors as printed, to the SI unit of the kind; where they are not exact, the last digit is rounded. */
const printed = readCsv("unit-factors.csv").map((row) => ({
  unit: textIn(row, "unit"),
  kind: textIn(row, "kind"),
  factor: numberIn(row, "factor"),
  tolerance: textIn(row, "exact") === "yes" ? 1e-12 * numberIn(row, "factor") : halfOfLastDigit(textIn(row, "factor")),
  source: textIn(row, "source"),
}));

const siUnits: Readonly<Record<string, string>> = {
  length: "m",
  area: "m²",
  volume: "m³",
  mass: "kg",
  "amount per volume": "kg/m³",
  energy: "J",
  power: "W",
};

function halfOfLastDigit(text: string): number {
  const [mantissa = "", exponent = ""] = text.split("E");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

const table = callFormula("=BATH.UNITS()");
const unitRows = Array.isArray(table) ? table.slice(1) : [];

describe("the factors of units", () => {
  it.each(printed)("list $unit at $factor ($source)", ({ unit, kind, factor, tolerance }) => {
    const listed = unitRows.find((row) => row[0] === unit && row[3] === kind);
    expect(Math.abs(Number(listed?.[4]) - factor)).toBeLessThanOrEqual(tolerance);
  });

  it.each(printed)("convert one $unit to $factor of the SI unit", ({ unit, kind, factor, tolerance }) => {
    const converted = callFormula(`=BATH.UNITCONVERT(1,"${unit}","${siUnits[kind] ?? ""}")`);
    expect(Math.abs(Number(converted) - factor)).toBeLessThanOrEqual(tolerance);
  });

  it("leave no customary unit of these kinds without a printed factor", () => {
    const customary = unitRows
      .filter((row) => String(row[3]) in siUnits && row[5] !== "SI")
      .map((row) => `${row[3]}: ${row[0]}`);
    expect(customary.filter((name) => !printed.some(({ unit, kind }) => name === `${kind}: ${unit}`))).toEqual([]);
    expect(customary.length).toBeGreaterThan(20);
  });
});
