import { readFile } from "node:fs/promises";
import path from "node:path";

import { expect } from "vitest";

import { samplesFolder } from "../../../scripts/build-samples.ts";
import { storedFormula } from "../../../src/files/stored-formula.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import type { WorkbookPlan } from "../../../src/joblog/model/plan.ts";
import { validateFile } from "./open-xml-validator.ts";
import { at, cellsOf, partsOf } from "./read-parts.ts";

async function sample(name: string): Promise<ReadonlyMap<string, string>> {
  return partsOf(await readFile(path.join(samplesFolder, name)));
}

export async function expectValid(name: string): Promise<void> {
  const result = await validateFile(path.join(samplesFolder, name));
  expect(result.errors).toEqual([]);
  expect(result.ok).toBe(true);
}

/** Every formula of the plan stands in the file, with a value. */
export async function expectTodaysFormulas(name: string, plan: WorkbookPlan): Promise<void> {
  const parts = await sample(name);
  plan.sheets.forEach((sheet, index) => {
    const cells = cellsOf(parts, index + 1);
    for (const cell of sheet.cells) {
      if (cell.kind !== "formula") continue;
      const stored = cells.get(cellAddress(cell.row, cell.column));
      expect(at(stored, "f"), `${sheet.name} ${cellAddress(cell.row, cell.column)}`).toBe(storedFormula(cell.formula));
      expect(at(stored, "v"), `${sheet.name} ${cellAddress(cell.row, cell.column)}`).toBeDefined();
    }
  });
}

/** No cell shows an error but the #N/A that leaves a gap in a chart. */
export async function expectNoErrors(name: string, plan: WorkbookPlan): Promise<void> {
  const parts = await sample(name);
  const errors = plan.sheets.flatMap((_, index) =>
    [...cellsOf(parts, index + 1).values()].filter((cell) => at(cell, "@t") === "e").map((cell) => at(cell, "v")),
  );
  expect(errors.length).toBeGreaterThan(0);
  for (const error of errors) expect(error).toBe("#N/A");
}

/** The value that the file stores for a column of a table's first row. */
export async function firstRowValue(
  name: string,
  plan: WorkbookPlan,
  tableName: string,
  column: string,
): Promise<unknown> {
  const index = plan.sheets.findIndex((sheet) => sheet.tables.some((table) => table.name === tableName));
  const table = plan.sheets[index]?.tables.find((one) => one.name === tableName);
  if (table === undefined) throw new RangeError(`No table ${tableName}`);
  const place = table.columns.findIndex((one) => one.id === column);
  return at(
    cellsOf(await sample(name), index + 1).get(cellAddress(table.area.row + 1, table.area.column + place)),
    "v",
  );
}
