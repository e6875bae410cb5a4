import type { WorkbookData } from "@odoo/o-spreadsheet";

import { areaText, type Cell, parseLocalAddress } from "./address.ts";
import type { CalculatedColumn } from "./workbook/table-record.ts";
import type { ValidationWords } from "./workbook/validations.ts";
import type { Workbook } from "./workbook/workbook.ts";

interface SavedTable {
  readonly sheet: string;
  /** Top left cell, by which the grid's table is found again. */
  readonly at: string;
  readonly name: string;
  readonly style: string;
  readonly calculated: readonly (readonly [header: string, column: CalculatedColumn])[];
}

/** A workbook as JSON: the grid's own data and beside it what the grid does not know. */
export interface SavedWorkbook {
  readonly version: 1;
  readonly grid: WorkbookData;
  readonly activeSheet: string;
  readonly tables: readonly SavedTable[];
  /** Formulas as Excel writes them, by sheet id and address, where the grid's text differs. */
  readonly formulas: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly formats: readonly (readonly [inGrid: string, inExcel: string])[];
  readonly nameComments: readonly (readonly [string, string])[];
  readonly chartNames: readonly (readonly [string, string])[];
  /** Beginnings of value axes that were chosen automatically. */
  readonly chartMinimums: readonly (readonly [string, number])[];
  readonly validationWords: readonly (readonly [rule: string, words: ValidationWords])[];
  readonly notes: readonly (readonly [sheet: string, notes: readonly (readonly [string, unknown])[]])[];
}

export function saveWorkbook(workbook: Workbook): SavedWorkbook {
  const formulas: Record<string, Record<string, string>> = {};
  for (const { cell, text } of workbook.formulas.entries()) (formulas[cell.sheet] ??= {})[address(cell)] = text;
  return {
    version: 1,
    grid: workbook.grid.model.exportData(),
    activeSheet: workbook.grid.model.getters.getActiveSheetId(),
    tables: workbook.tables.list().map(({ area, name, style, calculated }) => ({
      sheet: area.sheet,
      at: address(area),
      name,
      style,
      calculated: [...calculated],
    })),
    formulas,
    formats: [...workbook.formats.originals],
    nameComments: [...workbook.names.comments],
    chartNames: [...workbook.charts.names],
    chartMinimums: [...workbook.chartScale.chosen],
    validationWords: [...workbook.validations.words],
    notes: [...workbook.notes].map(([sheet, notes]) => [sheet, [...notes]]),
  };
}

function address({ row, column }: Cell): string {
  return areaText({ row, column, rows: 1, columns: 1 });
}

function cellOf(sheet: string, at: string): Cell {
  const area = parseLocalAddress(at, { rows: 0, columns: 0 });
  if (area === undefined) throw new RangeError(`The saved workbook is damaged: ${at} is no address.`);
  return { sheet, row: area.row, column: area.column };
}

/** Opens a saved workbook; `open` makes the workbook over the grid's data. */
export function restoreWorkbook(saved: SavedWorkbook, open: (data: object) => Workbook): Workbook {
  const workbook = open(structuredClone(saved.grid));
  for (const [inGrid, inExcel] of saved.formats) workbook.formats.originals.set(inGrid, inExcel);
  for (const [name, comment] of saved.nameComments) workbook.names.comments.set(name, comment);
  for (const [chartId, name] of saved.chartNames) workbook.charts.names.set(chartId, name);
  for (const [chartId, minimum] of saved.chartMinimums) workbook.chartScale.chosen.set(chartId, minimum);
  for (const [rule, words] of saved.validationWords) workbook.validations.words.set(rule, words);
  for (const [sheet, notes] of saved.notes) workbook.notes.set(sheet, new Map(notes));
  workbook.tables.adopt(
    saved.tables.map(({ sheet, at, name, style, calculated }) => ({
      cell: cellOf(sheet, at),
      name,
      style,
      calculated,
    })),
  );
  for (const [sheet, texts] of Object.entries(saved.formulas)) {
    for (const [at, text] of Object.entries(texts)) workbook.formulas.adopt(cellOf(sheet, at), text);
  }
  if (workbook.sheets.exists(saved.activeSheet)) workbook.activate(saved.activeSheet);
  return workbook;
}
