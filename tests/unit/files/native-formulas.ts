import { writeWorkbook } from "../../../src/files/xlsx-writer.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import type { CellPlan, SheetPlan, TableColumnPlan, WorkbookPlan } from "../../../src/joblog/model/plan.ts";
import { recalculated } from "./libre-office.ts";
import { at, cellsOf, type Element, partsOf } from "./read-parts.ts";

type Shown = string | number | boolean;

/** What the workbench shows in a cell. */
export type ShownIn = (sheet: string, row: number, column: number) => Shown;

const ours = (formula: string | undefined): boolean => formula?.includes("BATH.") === true;

function withoutFormula({ id, header, style, numberFormat }: TableColumnPlan): TableColumnPlan {
  return { id, header, style, ...(numberFormat === undefined ? {} : { numberFormat }) };
}

/** The plan with the add-in's own results as plain values, which is what LibreOffice can go on from. */
function withoutAddIn(plan: WorkbookPlan, shown: ShownIn): WorkbookPlan {
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
      tables: sheet.tables.map((table) => ({
        ...table,
        columns: table.columns.map((column) => (ours(column.formula) ? withoutFormula(column) : column)),
      })),
    })),
  };
}

/** A value as text, numbers to nine figures. */
export function words(value: Shown): string {
  return typeof value === "number" ? value.toPrecision(9) : String(value);
}

/** What a file stores as a formula's result; a number has no type or the type "n". */
export function storedResult(cell: Element | undefined): Shown {
  const value = at(cell, "v");
  if (typeof value !== "string") return "";
  return [undefined, "n"].includes(cell?.["@t"] as string | undefined) ? Number(value) : value;
}

/** Every formula without a function of ours: a line as the workbench shows it, and one as LibreOffice works it out. */
export async function workedOutTwice(
  plan: WorkbookPlan,
  shown: ShownIn,
): Promise<{ readonly expected: readonly string[]; readonly found: readonly string[] }> {
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
  return { expected, found };
}
