import { expect, it } from "vitest";

import { planFields } from "../../../src/excel/build/insert-fields.ts";
import type { Survey } from "../../../src/excel/build/survey-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";

const { names, sheets } = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

/** The statement as it stands but for these named cells. */
function insertedFor(missing: readonly string[]) {
  const plan = sheets.find(({ id }) => id === "statement");
  if (plan === undefined) throw new Error("The log has no statement.");
  const own = names.filter(({ sheet }) => sheet === plan.name);
  const survey: Survey = {
    version: 1,
    sheets: [plan.name],
    tableSheets: new Map(),
    nameSheets: new Map(),
    tables: [],
    cells: new Map(
      own
        .filter(({ name }) => !missing.includes(name))
        .map(({ name, sheet, row, column }) => [name, { sheet, row, column, formula: "" }]),
    ),
    protectedSheets: new Set(),
    structureLocked: false,
  };
  const placement = { plan, actual: plan.name, kept: true, missingTables: [], missingNames: [] };
  const wanted = own.filter(({ name }) => missing.includes(name));
  return { own, insertions: planFields([placement], own, wanted, survey) };
}

it("of two fields on a line the new one alone is inserted, with its own label, value and no help of the other", () => {
  const { own, insertions } = insertedFor(["Statement.Invoice"]);
  const planned = own.find(({ name }) => name === "Statement.Invoice");
  const last = Math.max(...own.map(({ row }) => row));
  expect(insertions).toHaveLength(1);
  const [{ cells, names: named, row } = { cells: [], names: [], row: 0 }] = insertions;
  expect(row).toBe(last + 1);
  expect(named.map(({ name, column }) => [name, column])).toEqual([["Statement.Invoice", planned?.column]]);
  expect(cells.map(({ style, column }) => [style, column > 3])).toEqual([
    ["fieldLabel", true],
    ["fieldStated", true],
  ]);
});

it("both fields of a line get a line each, none of their cells twice", () => {
  const { insertions } = insertedFor(["Statement.Claim", "Statement.Invoice"]);
  const cells = insertions.flatMap((one) => one.cells);
  expect(new Set(cells.map(({ row, column }) => `${String(row)} ${String(column)}`)).size).toBe(cells.length);
  expect(cells.filter(({ style }) => style === "fieldLabel")).toHaveLength(2);
  expect(cells.filter(({ style }) => style === "fieldHelp")).toHaveLength(1);
});
