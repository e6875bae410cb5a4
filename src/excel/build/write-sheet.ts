import { areaAddress, columnLetters } from "../../joblog/layout/addresses.ts";
import { pageMargins } from "../../joblog/layout/page-margins.ts";
import type { CellPlan, SheetPlan, TablePlan } from "../../joblog/model/plan.ts";
import { cellValue } from "../cell-text.ts";

function contains(table: TablePlan, cell: CellPlan): boolean {
  const { row, column, rows, columns } = table.area;
  return cell.row >= row && cell.row < row + rows && cell.column >= column && cell.column < column + columns;
}

export function insideTable(table: TablePlan): (cell: CellPlan) => boolean {
  return (cell) => contains(table, cell);
}

/**
 * The planned values as one block; formulas come later, when every table they name exists. Only for
 * ground that is blank: cells between the values are written as blanks.
 */
export function writeValues(worksheet: Excel.Worksheet, cells: readonly CellPlan[]): void {
  const values = cells.filter((cell) => cell.kind === "value");
  if (values.length === 0) return;
  const top = Math.min(...values.map((cell) => cell.row));
  const left = Math.min(...values.map((cell) => cell.column));
  const rows = Math.max(...values.map((cell) => cell.row)) - top + 1;
  const columns = Math.max(...values.map((cell) => cell.column)) - left + 1;
  const block: (string | number | boolean)[][] = Array.from({ length: rows }, () =>
    Array.from({ length: columns }, () => ""),
  );
  for (const cell of values) {
    const line = block[cell.row - top];
    if (line !== undefined) line[cell.column - left] = cellValue(cell.value);
  }
  worksheet.getRangeByIndexes(top, left, rows, columns).values = block;
}

/** Turns the written block of a table into an Excel table. */
export function addTable(worksheet: Excel.Worksheet, plan: TablePlan): void {
  const table = worksheet.tables.add(areaAddress(plan.area), true);
  table.name = plan.name;
  table.style = "TableStyleLight1";
  table.showBandedRows = false;
  table.showFilterButton = false;
}

const pointsInInch = 72;

/** After the widths: a column that is given one is shown. */
export function foldColumns(worksheet: Excel.Worksheet, { folded = [] }: SheetPlan): void {
  for (const { first, last } of folded) {
    const columns = worksheet.getRange(`${columnLetters(first)}:${columnLetters(last)}`);
    columns.group("ByColumns");
    columns.hideGroupDetails("ByColumns");
  }
}

/** How the sheet scrolls and prints. */
export function writePageSetUp(worksheet: Excel.Worksheet, plan: SheetPlan): void {
  worksheet.tabColor = plan.tabColor;
  worksheet.showGridlines = false;
  if (plan.frozenRows > 0) worksheet.freezePanes.freezeRows(plan.frozenRows);
  const layout = worksheet.pageLayout;
  layout.orientation = plan.orientation === "portrait" ? "Portrait" : "Landscape";
  layout.zoom = { horizontalFitToPages: plan.pagesWide, ...(plan.onePage === true ? { verticalFitToPages: 1 } : {}) };
  for (const [side, inches] of Object.entries(pageMargins))
    layout[`${side as keyof typeof pageMargins}Margin`] = inches * pointsInInch;
  layout.setPrintArea(`A:${columnLetters(plan.lastPrintedColumn)}`);
  const onEveryPage = layout.headersFooters.defaultForAllPages;
  onEveryPage.leftFooter = "&A";
  onEveryPage.centerFooter = plan.footer;
  onEveryPage.rightFooter = "Page &P of &N";
  for (const row of plan.pageBreaks ?? []) worksheet.horizontalPageBreaks.add(`A${String(row + 1)}`);
  if (plan.pagesWide > 1) layout.setPrintTitleColumns("$A:$A");
  if (plan.titleRows !== undefined) {
    layout.setPrintTitleRows(`$${String(plan.titleRows.first + 1)}:$${String(plan.titleRows.last + 1)}`);
  }
}
