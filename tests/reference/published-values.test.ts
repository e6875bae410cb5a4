import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { CellMatrix, CellValue } from "../../functions/define-function.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";
import { worksheetValue } from "./worksheet-value.ts";

/** A difference of exactly the tolerance passes, whatever its last bit. */
const lastBits = 1e-12;

function cellMatches(cell: CellValue, expected: string, tolerance: number): boolean {
  if (typeof cell === "number") return Math.abs(cell - Number(expected)) <= tolerance + lastBits * Math.abs(cell);
  return typeof cell === "boolean" ? cell === (expected === "TRUE") : cell === expected;
}

/** A spilled range is written cell by cell with semicolons. */
function matches(result: CellValue | CellMatrix, expected: string, tolerance: number): boolean {
  const cells = Array.isArray(result) ? result.flat() : [result];
  const wanted = expected.split(";");
  return (
    cells.length === wanted.length && cells.every((cell, index) => cellMatches(cell, wanted[index] ?? "", tolerance))
  );
}

const published = readCsv("worksheet-functions.csv");
const wrong = readCsv("wrong-printed-values.csv");

/**
 * Basis of a row: P a published page or table, D by definition, S by stoichiometry or arithmetic, M from memory,
 * C common practice without a source.
 */
describe("worksheet functions against published values", () => {
  it.each(published.map((row) => [textIn(row, "id"), textIn(row, "what"), row] as const))(
    "%s: %s",
    (_id, _what, row) => {
      const result = worksheetValue(textIn(row, "formula"));
      expect(
        matches(result, textIn(row, "expected"), numberIn(row, "tolerance")),
        `got ${JSON.stringify(result)}`,
      ).toBe(true);
    },
  );

  it("cite a source and a basis for every row, and give each row an id of its own", () => {
    expect(new Set(published.map((row) => textIn(row, "id"))).size).toBe(published.length);
    for (const row of published) {
      expect(textIn(row, "basis"), textIn(row, "id")).toMatch(/^[PDSMC]$/);
      expect(textIn(row, "source").length, textIn(row, "id")).toBeGreaterThan(5);
    }
  });

  /** A reader must be able to find it. */
  const nameless =
    /\b(?:a|an|another|one|several|two|widely)\b[^,:;]*\b(?:page|guide|chart|exercise|note|course|code|calculator|table|supplier|textbook)s?\b/i;

  it("name their sources so that a reader can find them", () => {
    const sources = [...published, ...wrong].map((row) => textIn(row, "source"));
    const examples = catalogue.flatMap((fn) => fn.examples.map(({ source }) => source));
    expect([...sources, ...examples].filter((source) => nameless.test(source))).toEqual([]);
  });

  it("number at least 110", () => {
    expect(published.length).toBeGreaterThanOrEqual(110);
  });
});

describe("worksheet functions against values that are printed wrong", () => {
  it.each(wrong.map((row) => [textIn(row, "id"), textIn(row, "what"), row] as const))("%s: %s", (_id, _what, row) => {
    const result = worksheetValue(textIn(row, "formula"));
    const tolerance = numberIn(row, "tolerance");
    expect(matches(result, textIn(row, "right"), tolerance), `got ${JSON.stringify(result)}`).toBe(true);
    expect(matches(result, textIn(row, "printed"), tolerance), `got ${JSON.stringify(result)}`).toBe(false);
  });
});

describe("the list of check values", () => {
  const covered = new Set([...published, ...wrong].map((row) => textIn(row, "id").slice(0, 3)));
  const notCovered = readCsv("not-covered.csv");
  const reasons = new Map(notCovered.map((row) => [textIn(row, "id"), textIn(row, "reason")]));
  const listed = readCsv("check-value-ids.csv").map((row) => textIn(row, "id"));

  it.each(listed)("holds %s, which a row reproduces or a reason leaves out, not both", (id) => {
    expect([covered.has(id), reasons.has(id)].filter(Boolean)).toHaveLength(1);
  });

  it("leaves nothing out without a reason, nor anything that it does not hold", () => {
    expect(reasons.size).toBe(notCovered.length);
    for (const [id, reason] of reasons) {
      expect(listed).toContain(id);
      expect(reason.length).toBeGreaterThan(10);
    }
  });
});
