import { expect, it } from "vitest";
import { buildLog } from "../../../src/excel/log-workbook.ts";
import { cellAddress } from "../../../src/files/addresses.ts";
import { writeWorkbook } from "../../../src/files/xlsx-writer.ts";
import type { LogRow } from "../../../src/joblog/definition.ts";
import { demoBath as bath, moment } from "../../../src/joblog/demo-week-times.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/lay-out.ts";
import type { CellPlan, SheetPlan, TableColumnPlan, WorkbookPlan } from "../../../src/joblog/plan.ts";
import { openWorkbook } from "../excel/open-workbook.ts";
import { demoRowsAnd, demoWith } from "../joblog/worked-log.ts";
import { hasLibreOffice, recalculated } from "./libre-office.ts";
import { at, cellsOf, partsOf, type Element } from "./read-parts.ts";

type Shown = string | number | boolean;

const reading = (id: string, day: 2 | 3, clock: string, ph: number, purpose: string): LogRow => ({ id, bath, when: moment(day, clock), purpose, ph, temperature: 77 });
const topUp = (id: string, day: 2 | 3, clock: string, amount: number, phBefore: number, phAfter?: number): LogRow =>
  ({ id, bath, when: moment(day, clock), kind: "concentrate", purpose: "top-up", amount, account: "claims", phBefore, phAfter });

/** Two rounds of top-ups, the second larger: every computed column has something to say. */
const content = demoWith({
  readings: demoRowsAnd("readings",
    reading("R011", 2, "08:00", 10.84, "check"), reading("R012", 2, "08:40", 11.2, "after top-up"), reading("R013", 2, "09:20", 11.4, "after top-up"),
    reading("R014", 3, "08:00", 10.83, "check"), reading("R015", 3, "08:30", 11.1, "after top-up")),
  additions: demoRowsAnd("additions",
    topUp("A005", 2, "08:10", 1.39, 10.84, 11.2), topUp("A006", 2, "08:50", 0.61, 11.2, 11.4), topUp("A007", 3, "08:00", 1.39, 10.83, 11.1), topUp("A008", 3, "08:50", 1.2, 11.1)),
});

const ours = (formula: string | undefined): boolean => formula?.includes("BATH.") === true;

function withoutFormula({ id, header, style, numberFormat }: TableColumnPlan): TableColumnPlan {
  return { id, header, style, ...(numberFormat === undefined ? {} : { numberFormat }) };
}

/** The plan with the add-in's own results as plain values, which is what LibreOffice can go on from. */
function withoutAddIn(plan: WorkbookPlan, shown: (sheet: string, row: number, column: number) => Shown): WorkbookPlan {
  const cell = (sheet: SheetPlan, one: CellPlan): CellPlan => {
    if (one.kind !== "formula" || !ours(one.formula)) return one;
    const { row, column, style } = one;
    return { row, column, style, kind: "value", value: shown(sheet.name, row, column) };
  };
  return {
    ...plan,
    sheets: plan.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((one) => cell(sheet, one)),
      tables: sheet.tables.map((table) => ({ ...table, columns: table.columns.map((column) => (ours(column.formula) ? withoutFormula(column) : column)) })),
    })),
  };
}

/** A value as text, numbers to nine figures. */
function words(value: Shown): string {
  return typeof value === "number" ? value.toPrecision(9) : String(value);
}

/** What a file stores as a formula's result; a number has no type or the type "n". */
function storedResult(cell: Element | undefined): Shown {
  const value = at(cell, "v");
  if (typeof value !== "string") return "";
  return [undefined, "n"].includes(cell?.["@t"] as string | undefined) ? Number(value) : value;
}

if (hasLibreOffice) it("LibreOffice works out every formula of a log as the workbench does", { timeout: 120_000 }, async () => {
  const host = openWorkbook();
  const plan = layOut(jobLog, { system: "US" }, content);
  await buildLog(plan);
  const sheets = new Map(plan.sheets.map((sheet) => [sheet.name, host.values(sheet.name)] as const));
  const shown = (sheet: string, row: number, column: number): Shown => sheets.get(sheet)?.[row]?.[column] ?? "";
  // Every formula is stored with a 0, so that nothing but a recalculation can make them right.
  const parts = partsOf(await recalculated(await writeWorkbook(withoutAddIn(plan, shown), () => 0)));
  const expected: string[] = [];
  const found: string[] = [];
  plan.sheets.forEach((sheet, index) => {
    const cells = cellsOf(parts, index + 1);
    for (const cell of sheet.cells) {
      if (cell.kind !== "formula" || ours(cell.formula)) continue;
      const place = `${sheet.name}!${cellAddress(cell.row, cell.column)}`;
      expected.push(`${place} ${words(shown(sheet.name, cell.row, cell.column))}`);
      found.push(`${place} ${words(storedResult(cells.get(cellAddress(cell.row, cell.column))))}`);
    }
  });
  expect(expected.length).toBeGreaterThan(250);
  expect(expected.some((line) => line.endsWith("top-ups grow: consider a change-out"))).toBe(true);
  expect(found).toEqual(expected);
});
