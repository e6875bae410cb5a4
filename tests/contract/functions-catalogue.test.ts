import { readdirSync, readFileSync } from "node:fs";

import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { argumentsOf } from "../reference/call-formula.ts";

const functionsFolder = new URL("../../functions/", import.meta.url);

function definitionFiles(): string[] {
  return readdirSync(functionsFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap((family) =>
      readdirSync(new URL(`${family.name}/`, functionsFolder)).map((file) => `${family.name}/${file}`),
    );
}

async function definedIn(file: string): Promise<WorksheetFunction[]> {
  const exports: unknown = await import(new URL(file, functionsFolder).href);
  return Object.values(exports as Record<string, unknown>).filter(
    (value): value is WorksheetFunction => typeof value === "object" && value !== null && "compute" in value,
  );
}

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
  it("holds every function that a file in functions defines, once", async () => {
    const defined = (await Promise.all(definitionFiles().map(definedIn))).flat();
    expect(defined.length).toBeGreaterThan(0);
    expect(defined.map(({ id }) => id).sort()).toEqual(catalogue.map(({ id }) => id).sort());
  });

  it("holds the ids of the list, every one and no other: an id stays for ever once it is released", () => {
    const listed = readFileSync(new URL("released-ids", import.meta.url), "utf8")
      .trim()
      .split("\n");
    expect(catalogue.map(({ id }) => id).sort()).toEqual(listed);
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
