import { readFileSync } from "node:fs";

import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { CellMatrix, CellValue } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { helpOrder } from "../../functions/help-order.ts";
import { catalogueFaults } from "../../scripts/catalogue/catalogue-faults.ts";
import { catalogueTexts } from "../../scripts/catalogue/catalogue-texts.ts";
import { definitionFiles } from "../../scripts/catalogue/definition-files.ts";
import { isRelease, releasedIds, releaseFaults } from "../../scripts/catalogue/released-ids.ts";
import { argumentsOf } from "../reference/call-formula.ts";

function closeTo(result: CellValue | CellMatrix, expected: CellValue | CellMatrix, tolerance: number): void {
  if (Array.isArray(expected)) {
    expect(Array.isArray(result)).toBe(true);
    const rows = Array.isArray(result) ? result : [];
    expect(rows.map((row) => row.length)).toEqual(expected.map((row) => row.length));
    expected.forEach((row, index) => {
      row.forEach((cell, column) => {
        closeTo(rows[index]?.[column] ?? null, cell, tolerance);
      });
    });
  } else if (typeof expected === "number") {
    expect(typeof result).toBe("number");
    expect(Math.abs(Number(result) - expected)).toBeLessThanOrEqual(Math.max(tolerance, 1e-12));
  } else {
    expect(result).toBe(expected);
  }
}

describe("the catalogue", () => {
  it("holds every function that a file in functions defines, once, with its text for the reference page", async () => {
    const files = await definitionFiles();
    expect(catalogueFaults(files, helpOrder)).toEqual([]);
    const defined = files.flatMap(({ functions }) => [...functions.values()]);
    expect(defined.length).toBeGreaterThan(0);
    expect(defined.map(({ id }) => id).sort()).toEqual(catalogue.map(({ id }) => id).sort());
  });

  it("is as written from the files in the order of the help; after a change: npm run catalogue", async () => {
    const texts = catalogueTexts(await definitionFiles(), helpOrder);
    for (const [name, text] of Object.entries(texts))
      expect(readFileSync(new URL(`../../functions/${name}`, import.meta.url), "utf8"), name).toBe(text);
  });

  it("holds the ids of every function that was ever released, and at a release all of them", () => {
    const ids = catalogue.map(({ id }) => id);
    const changelog = readFileSync(new URL("../../CHANGELOG.md", import.meta.url), "utf8");
    expect(releaseFaults(releasedIds(), ids, isRelease(changelog))).toEqual([]);
  });

  it("takes the system last wherever it takes one", () => {
    for (const fn of catalogue) {
      const index = fn.arguments.findIndex(({ name }) => name === "system");
      expect([-1, fn.arguments.length - 1], fn.id).toContain(index);
    }
  });

  it("never puts a required argument after an optional one", () => {
    for (const fn of catalogue) {
      const optional = fn.arguments.map((argument) => argument.optional);
      expect(optional, fn.id).toEqual([...optional].sort());
    }
  });

  it("says of every function what it does not know and where it comes from", () => {
    for (const fn of catalogue) {
      expect(fn.notes.length, fn.id).toBeGreaterThan(0);
      expect(fn.source.length, fn.id).toBeGreaterThan(5);
      expect(fn.examples.length, fn.id).toBeGreaterThan(0);
    }
  });

  for (const fn of catalogue) {
    for (const example of fn.examples) {
      it(`gives what the help says for ${example.formula}`, () => {
        closeTo(evaluate(fn, example.cells), example.result, example.tolerance ?? 0);
      });

      it(`shows ${example.formula} with the cells that the example runs`, () => {
        const call = argumentsOf(example.formula);
        expect(call.id).toBe(fn.id);
        expect(call.cells).toEqual(example.cells);
      });
    }
  }
});
