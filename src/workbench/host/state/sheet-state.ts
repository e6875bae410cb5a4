import type { SheetData } from "@odoo/o-spreadsheet";

import type {
  CalculatedColumnState,
  ConditionalFormatState,
  DressedCell,
  FigureState,
  FormulaCell,
  KeptValue,
  LineSize,
  SheetState,
  StateValue,
  TableState,
  TypedCell,
  ValidationState,
} from "../../../state/workbook-state.ts";
import { areaText, type Cell } from "../address.ts";
import { isTextFormat } from "../workbook/text-format.ts";
import type { Workbook } from "../workbook/workbook.ts";
import { bareChart, chartState, gridChart } from "./chart-state.ts";
import { bordersOf } from "./grid-data.ts";
import { LookPool } from "./looks.ts";
import { printState } from "./print-state.ts";

/** Without undefined members and without anything that the grid may change later. */
function plain<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value)) as Value;
}

class Texts {
  readonly list: string[] = [];
  private readonly numbers = new Map<string, number>();

  number(text: string): number {
    const known = this.numbers.get(text);
    if (known !== undefined) return known;
    const number = this.list.push(text) - 1;
    this.numbers.set(text, number);
    return number;
  }
}

type StoredCell = ReturnType<Workbook["grid"]["model"]["getters"]["getCells"]>[number];

function literalValue(workbook: Workbook, stored: Extract<StoredCell, { isFormula: false }>): StateValue {
  const { content, format, parsedValue } = stored;
  if (isTextFormat(format)) return content;
  if (content.startsWith("'")) return content.slice(1);
  if (workbook.library.helpers.isEvaluationError(content)) return { error: workbook.cells.excelError(content) };
  return parsedValue ?? "";
}

type Cells = Pick<SheetState, "formulas" | "looks" | "typed" | "worked" | "dressed" | "kept">;

function cellsOf(workbook: Workbook, sheet: string): Cells {
  const { model } = workbook.grid;
  const looks = new LookPool(workbook.formats.spelling);
  const borderAt = bordersOf(workbook.library, model, sheet);
  const texts = new Texts();
  const typed: TypedCell[] = [];
  const worked: FormulaCell[] = [];
  const dressed: DressedCell[] = [];
  const kept: KeptValue[] = [];
  const size = workbook.grid.sizeOf(sheet);
  for (let row = 0; row < size.rows; row += 1) {
    for (let column = 0; column < size.columns; column += 1) {
      const position = { sheetId: sheet, row, col: column };
      const stored = model.getters.getCell(position);
      const border = borderAt(row, column);
      if (stored === undefined && border === undefined) continue;
      const look = looks.numberOf(stored?.style, border, stored?.format);
      const cell: Cell = { sheet, row, column };
      const text = stored === undefined ? undefined : workbook.formulas.textOf(cell, stored);
      if (text !== undefined) {
        worked.push([row, column, look, texts.number(text)]);
        if (stored?.isFormula === false) kept.push([row, column, literalValue(workbook, stored)]);
      } else if (stored?.isFormula === false && stored.content !== "")
        typed.push([row, column, look, literalValue(workbook, stored)]);
      else if (look !== 0) dressed.push([row, column, look]);
    }
  }
  return { formulas: texts.list, looks: looks.looks, typed, worked, dressed, kept };
}

function tablesOf(workbook: Workbook, sheet: string): readonly TableState[] {
  return workbook.tables
    .list()
    .filter(({ area }) => area.sheet === sheet)
    .map((table) => {
      const config = workbook.tables.configOf(table);
      const drawnAs = config?.styleId ?? "None";
      return {
        name: table.name,
        area: areaText(table.area),
        style: table.style,
        ...(drawnAs === (table.style || "None") ? {} : { drawnAs }),
        headerRow: (config?.numberOfHeaders ?? 1) > 0,
        totalsRow: config?.totalRow ?? false,
        filterButtons: config?.hasFilters ?? false,
        bandedRows: config?.bandedRows ?? false,
        bandedColumns: config?.bandedColumns ?? false,
        firstColumn: config?.firstColumn ?? false,
        lastColumn: config?.lastColumn ?? false,
        calculated: table.headers.flatMap((header): readonly CalculatedColumnState[] => {
          const column = table.calculated.get(header.toLowerCase());
          if (column === undefined) return [];
          return [{ header, formula: column.text, ...(column.kind === "relative" ? { row: column.row } : {}) }];
        }),
      };
    });
}

function validationsOf(workbook: Workbook, grid: SheetData): readonly ValidationState[] {
  return grid.dataValidationRules.map(({ id, criterion, ranges, isBlocking }) => {
    const words = workbook.validations.words.get(id);
    return plain({
      ranges,
      criterion,
      blocks: isBlocking ?? false,
      ...(words === undefined ? {} : { words }),
    });
  });
}

function figureOf(workbook: Workbook, figure: SheetData["figures"][number]): FigureState {
  const { charts, chartScale, library } = workbook;
  const { col, row, offset, width, height, tag } = figure;
  const place = { row, column: col, offset, width, height };
  const data: unknown = figure.data;
  const id = tag === "chart" ? String((data as { readonly chartId?: unknown }).chartId) : undefined;
  if (id === undefined) return { ...place, other: { tag, data } };
  const definition = charts.definition(id);
  const name = charts.names.get(id) ?? "";
  const automaticMinimum = chartScale.chosen.has(id);
  const chart = chartState(definition, { name, automaticMinimum, series: charts.notesOf(id) });
  const isAll = chart !== undefined && library.helpers.deepEquals(bareChart(definition), bareChart(gridChart(chart)));
  return {
    ...place,
    ...(chart === undefined ? {} : { chart }),
    ...(isAll ? {} : { other: { tag, name, data } }),
  };
}

function sizesOf(lines: SheetData["cols"]): Readonly<Record<number, LineSize>> {
  const entries = Object.entries(lines).map(([index, { size, isHidden }]): readonly [string, LineSize] => [
    index,
    { ...(size === undefined ? {} : { size }), ...(isHidden === true ? { hidden: true } : {}) },
  ]);
  return Object.fromEntries(entries.filter(([, line]) => Object.keys(line).length > 0));
}

/** One sheet of the workbook; `grid` is what the grid itself says of it beside its cells. */
export function sheetState(workbook: Workbook, grid: SheetData): SheetState {
  const { id: sheet } = grid;
  const columnGroups = (grid.headerGroups?.COL ?? []).map(({ start, end, isFolded }) => ({
    first: start,
    last: end,
    folded: isFolded === true,
  }));
  return {
    id: sheet,
    name: grid.name,
    rows: grid.rowNumber,
    columns: grid.colNumber,
    ...cellsOf(workbook, sheet),
    tables: tablesOf(workbook, sheet),
    validations: validationsOf(workbook, grid),
    conditionalFormats: grid.conditionalFormats.map(({ ranges, rule, stopIfTrue }) =>
      plain({ ranges, rule: rule as ConditionalFormatState["rule"], ...(stopIfTrue === true ? { stopIfTrue } : {}) }),
    ),
    figures: grid.figures.map((figure) => plain(figureOf(workbook, figure))),
    merges: [...grid.merges],
    columnSizes: sizesOf(grid.cols),
    rowSizes: sizesOf(grid.rows),
    frozen: { rows: grid.panes?.ySplit ?? 0, columns: grid.panes?.xSplit ?? 0 },
    gridlines: grid.areGridLinesVisible ?? true,
    visible: grid.isVisible,
    locked: grid.isLocked ?? false,
    ...(grid.color === undefined ? {} : { tabColor: grid.color }),
    print: printState(workbook.notes.get(sheet)),
    ...(columnGroups.length > 0 ? { columnGroups } : {}),
    ...((grid.headerGroups?.ROW ?? []).length > 0 ? { others: plain({ headerGroups: grid.headerGroups }) } : {}),
  };
}
