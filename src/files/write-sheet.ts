import type { CellValue, DataValidation, Style, Workbook, Worksheet } from "@cj-tech-master/excelts";

import { absoluteArea, areaAddress, cellAddress } from "../joblog/layout/addresses.ts";
import { pageMargins } from "../joblog/layout/page-margins.ts";
import type { SheetPlan, TablePlan, ValidationPlan } from "../joblog/model/plan.ts";
import { fileStyle, signalStyle } from "./cell-style.ts";
import { fileValue, type ValueOf } from "./cell-value.ts";
import { rowHeights } from "./row-heights.ts";
import { storedFormula } from "./stored-formula.ts";

/** A stored width counts five pixels beside the characters, of seven pixels each (ECMA-376, 18.3.1.13). */
const cellPadding = 5 / 7;

/** US Letter. */
const paperSize = 1;

function writeTable(worksheet: Worksheet, plan: TablePlan, values: ReadonlyMap<string, CellValue>): void {
  const { row, column, rows } = plan.area;
  worksheet.addTable({
    name: plan.name,
    displayName: plan.name,
    ref: cellAddress(row, column),
    headerRow: true,
    totalsRow: false,
    style: { theme: "TableStyleLight1", showRowStripes: false },
    columns: plan.columns.map(({ header, formula }) => ({
      name: header,
      filterButton: false,
      ...(formula === undefined ? {} : { calculatedColumnFormula: storedFormula(formula) }),
    })),
    rows: Array.from({ length: rows - 1 }, (_, line) =>
      plan.columns.map((_column, index) => values.get(cellAddress(row + 1 + line, column + index)) ?? null),
    ),
  });
}

function fileValidation({ rule, errorTitle, errorMessage }: ValidationPlan): DataValidation {
  const common = { allowBlank: true, showErrorMessage: true, errorStyle: "stop", errorTitle, error: errorMessage };
  switch (rule.kind) {
    case "list":
      return { ...common, type: "list", formulae: [`"${rule.choices.join(",")}"`] };
    case "list of area":
      return { ...common, type: "list", formulae: [absoluteArea(rule.sheet, rule.area)] };
    case "number between":
      return { ...common, type: "decimal", operator: "between", formulae: [rule.low, rule.high] };
    case "date from":
      return { ...common, type: "decimal", operator: "greaterThanOrEqual", formulae: [rule.serial] };
    case "formula":
      return { ...common, type: "custom", formulae: [rule.formula.slice(1)] };
  }
}

function writePageSetUp(worksheet: Worksheet, plan: SheetPlan): void {
  Object.assign(worksheet.pageSetup, {
    orientation: plan.orientation,
    paperSize,
    margins: pageMargins,
    fitToPage: true,
    fitToWidth: plan.pagesWide,
    fitToHeight: plan.onePage === true ? 1 : 0,
  });
  if (plan.titleRows !== undefined)
    worksheet.pageSetup.printTitlesRow = `${String(plan.titleRows.first + 1)}:${String(plan.titleRows.last + 1)}`;
  // A break of the format follows the row that it names, counted from 1.
  for (const row of plan.pageBreaks ?? []) worksheet.getRow(row).addPageBreak();
  if (plan.pagesWide > 1) worksheet.pageSetup.printTitlesColumn = "A:A";
  worksheet.headerFooter.oddFooter = `&L&A&C${plan.footer}&RPage &P of &N`;
}

/** Excel shows a button over the column after a group that opens it. */
function foldColumns(worksheet: Worksheet, { folded = [] }: SheetPlan): void {
  if (folded.length === 0) return;
  worksheet.properties.outlineLevelCol = 1;
  for (const { first, last } of folded)
    for (let column = first; column <= last; column += 1)
      Object.assign(worksheet.getColumn(column + 1), { outlineLevel: 1, hidden: true });
}

/** Remembers answers: the formula of a column stands in each of its rows. */
function eachOnce(work: (text: string) => string): (text: string) => string {
  const known = new Map<string, string>();
  return (text) => {
    const answer = known.get(text) ?? work(text);
    known.set(text, answer);
    return answer;
  };
}

/** Writes one sheet of the plan into the workbook, formulas with their known values; charts come when every sheet is there. */
export function writeSheet(workbook: Workbook, plan: SheetPlan, valueOf: ValueOf): Worksheet {
  const worksheet = workbook.addWorksheet(plan.name, {
    properties: { tabColor: { argb: `FF${plan.tabColor.slice(1)}` } },
    views:
      plan.frozenRows > 0
        ? [
            {
              state: "frozen",
              ySplit: plan.frozenRows,
              topLeftCell: cellAddress(plan.frozenRows, 0),
              activeCell: cellAddress(plan.frozenRows, 0),
              showGridLines: false,
            },
          ]
        : [{ showGridLines: false }],
  });
  worksheet.columns = plan.columnWidths.map((characters) => ({ width: characters + cellPadding }));
  foldColumns(worksheet, plan);
  const stored = eachOnce(storedFormula);
  const values = new Map(
    plan.cells.map(
      (cell) => [cellAddress(cell.row, cell.column), fileValue(cell, plan.name, valueOf, stored)] as const,
    ),
  );
  for (const table of plan.tables) writeTable(worksheet, table, values);
  // The library counts a style object that it knows as the same style, which it otherwise finds out part by part.
  const styles = new Map<string, Partial<Style>>();
  for (const cell of plan.cells) {
    const address = cellAddress(cell.row, cell.column);
    const target = worksheet.getCell(address);
    const value = values.get(address) ?? null;
    const look = [cell.style, cell.numberFormat, cell.align, typeof value].join("\n");
    const style = styles.get(look) ?? fileStyle(cell);
    styles.set(look, style);
    target.value = value;
    target.style = style;
  }
  for (const [row, points] of rowHeights(plan, valueOf)) worksheet.getRow(row + 1).height = points;
  for (const validation of plan.validations)
    worksheet.dataValidations.add(areaAddress(validation.area), fileValidation(validation));
  plan.conditionalFormats.forEach(({ area, formula, look }, index) => {
    worksheet.addConditionalFormatting({
      ref: areaAddress(area),
      rules: [
        { type: "expression", priority: index + 1, formulae: [formula.replace(/^=/, "")], style: signalStyle(look) },
      ],
    });
  });
  writePageSetUp(worksheet, plan);
  return worksheet;
}
