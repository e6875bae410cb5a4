import { describe, expect, it } from "vitest";
import { callFormula } from "./call-formula.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";

function matches(result: unknown, expected: string, tolerance: number): boolean {
  if (Array.isArray(result)) return result.flat().map(String).join(";") === expected;
  if (typeof result === "number") return Math.abs(result - Number(expected)) <= tolerance;
  return result === expected;
}

describe("worksheet functions against printed values", () => {
  for (const row of readCsv("worksheet-functions.csv")) {
    const formula = textIn(row, "formula");
    const expected = textIn(row, "expected");
    const wanted = textIn(row, "must_match") === "yes";
    it(`${textIn(row, "id")}: ${formula} ${wanted ? "gives" : "does not give"} ${expected} (${textIn(row, "source")})`, () => {
      const result = callFormula(formula);
      expect(matches(result, expected, numberIn(row, "tolerance")), `got ${JSON.stringify(result)}`).toBe(wanted);
    });
  }
});
