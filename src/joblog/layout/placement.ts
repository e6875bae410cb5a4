import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { TableId } from "../formula/log-types.ts";
import type {
  ChartDefinition,
  ColumnDefinition,
  FieldDefinition,
  LogContent,
  LogDefinition,
  SheetDefinition,
  TableDefinition,
} from "../model/definition.ts";
import { headerOf } from "../model/headers.ts";
import type { AreaPlan } from "../model/plan.ts";
import { leastWidth } from "./header-width.ts";
import { linesOf } from "./line-breaks.ts";

/** Characters of a caution's line: what a printed page holds at a readable size. */
const cautionWidth = 125;

/** Empty sheet rows under a stacked table, so that it can grow past its spare rows. */
const roomBelowStacked = 3;

/** One blank row under a table that never grows. */
const roomBelowFixed = 1;

const chartRows = 14;

/** Of a chart over tables: a bar for each claim of a week. */
const lowChartRows = 10;
const chartCharacters = 110;

/** Width of a chart on a sheet of charts, two of which stand abreast. */
const chartPageColumn = 76;

const gapColumn = 3;

export interface PlacedTable {
  readonly table: TableDefinition;
  readonly sheet: SheetDefinition;
  /** Where the caption stands, if it is shown: beside a column that is repeated on every page, which would cut it. */
  readonly caption: { readonly row: number; readonly column: number } | undefined;
  /** Header row and data rows. */
  readonly area: AreaPlan;
}

export interface PlacedField {
  readonly field: FieldDefinition;
  readonly sheet: SheetDefinition;
  readonly row: number;
  readonly labelColumn: number;
  readonly valueColumn: number;
  /** Beside the value, or of a document beyond what is printed. */
  readonly helpColumn: number;
}

interface PlacedChart {
  readonly chart: ChartDefinition;
  readonly area: AreaPlan;
}

export interface PlacedSheet {
  readonly sheet: SheetDefinition;
  /** Where title, cautions, field labels and chart begin. */
  readonly headColumn: number;
  readonly cautionLines: readonly string[];
  readonly columnWidths: readonly number[];
  readonly fields: readonly PlacedField[];
  readonly tables: readonly PlacedTable[];
  readonly charts: readonly PlacedChart[];
}

export interface Placement {
  readonly sheets: readonly PlacedSheet[];
  readonly tables: ReadonlyMap<TableId, PlacedTable>;
}

function longestOf(sheet: SheetDefinition): number {
  return Math.max(0, ...sheet.tables.map((table) => table.columns.length));
}

/** A short table keeps clear of the column that is repeated on every page of a long one. */
function firstColumnOf(sheet: SheetDefinition, table: TableDefinition, longest: number): number {
  return table.columns.length < longest ? headColumnOf(sheet) : 0;
}

function columnWidth(column: ColumnDefinition | undefined, system: UnitSystem): number {
  return column === undefined ? 0 : Math.max(column.width, leastWidth(headerOf(column, system), column.type));
}

function widthsOf(sheet: SheetDefinition, system: UnitSystem): number[] {
  if (sheet.arrangement === "charts") {
    return [
      chartPageColumn,
      gapColumn,
      chartPageColumn,
      gapColumn,
      ...sheet.tables.flatMap((table) => table.columns.map((column) => columnWidth(column, system))),
    ];
  }
  if (sheet.arrangement === "side by side") {
    return sheet.tables.flatMap((table, index) => [
      ...(index === 0 ? [] : [gapColumn]),
      ...table.columns.map((column) => columnWidth(column, system)),
    ]);
  }
  const longest = longestOf(sheet);
  return Array.from({ length: longest }, (_, index) =>
    Math.max(
      ...sheet.tables.map((table) => columnWidth(table.columns[index - firstColumnOf(sheet, table, longest)], system)),
    ),
  );
}

/** On a sheet of several pages the first column is repeated on each; a title in it would be as well, cut off. */
function headColumnOf(sheet: SheetDefinition): number {
  return sheet.pagesWide > 1 ? 1 : 0;
}

/** First column from `start` on that leaves the labels room to its left. */
function afterLabels(
  fields: readonly FieldDefinition[],
  start: number,
  widths: readonly number[],
  system: UnitSystem,
): number {
  const needed = Math.max(0, ...fields.map((field) => headerOf(field, system).length + 2));
  let column = start;
  let room = 0;
  while (room < needed) room += widths[column++] ?? needed;
  return column;
}

/** How many columns of the longest of its tables are printed. */
export function printedColumns(sheet: SheetDefinition): number {
  return Math.max(
    0,
    ...sheet.tables.map(
      ({ columns }) =>
        columns.filter((column) => column.unprinted !== true && (column.role === "input" || column.helper !== true))
          .length,
    ),
  );
}

/** First column of the printed page's second half. */
function secondHalf(sheet: SheetDefinition, widths: readonly number[]): number {
  const printed = widths.slice(0, printedColumns(sheet));
  const half = printed.reduce((all, width) => all + width, 0) / 2;
  let column = 0;
  for (let left = 0; left < half && column < printed.length; column += 1) left += printed[column] ?? half;
  return column;
}

/** A line each; of a document some stand two on a line. */
function placeFields(
  sheet: SheetDefinition,
  top: number,
  widths: readonly number[],
  system: UnitSystem,
): readonly PlacedField[] {
  const isBeside = ({ beside }: FieldDefinition): boolean => beside === true;
  const right = secondHalf(sheet, widths);
  const columns = {
    left: headColumnOf(sheet),
    leftValue: afterLabels(
      sheet.fields.filter((field) => !isBeside(field)),
      headColumnOf(sheet),
      widths,
      system,
    ),
    rightValue: afterLabels(sheet.fields.filter(isBeside), right, widths, system),
  };
  let row = top - 1;
  return sheet.fields.map((field): PlacedField => {
    if (!isBeside(field)) row += 1;
    const valueColumn = isBeside(field) ? columns.rightValue : columns.leftValue;
    return {
      field,
      sheet,
      row,
      labelColumn: isBeside(field) ? right : columns.left,
      valueColumn,
      helpColumn: sheet.document === true ? printedColumns(sheet) + 1 : valueColumn + 1,
    };
  });
}

function placeTables(sheet: SheetDefinition, top: number, content: LogContent): readonly PlacedTable[] {
  const captioned = sheet.tables.length > 1;
  const longest = longestOf(sheet);
  let row = top;
  let column = sheet.arrangement === "charts" ? 4 : 0;
  return sheet.tables.map((table) => {
    const dataRows = Math.max(table.emptyRows, content.rows[table.id]?.length ?? 0);
    const headerRow = captioned ? row + 1 : row;
    const area: AreaPlan = {
      row: headerRow,
      column: sheet.arrangement === "stacked" ? firstColumnOf(sheet, table, longest) : column,
      rows: dataRows + 1,
      columns: table.columns.length,
    };
    const caption = { row, column: Math.max(area.column, headColumnOf(sheet)) };
    const placed: PlacedTable = { table, sheet, caption: captioned ? caption : undefined, area };
    if (sheet.arrangement === "stacked")
      row = headerRow + area.rows + (table.fixedRows === true ? roomBelowFixed : roomBelowStacked);
    else column += area.columns + 1;
    return placed;
  });
}

/** One under another from `top` on, beside a column that is repeated on every page. */
function placeCharts(sheet: SheetDefinition, top: number, widths: readonly number[]): readonly PlacedChart[] {
  const column = headColumnOf(sheet);
  let columns = 0;
  for (let room = 0; room < chartCharacters && column + columns < widths.length; columns += 1)
    room += widths[column + columns] ?? 0;
  return (sheet.charts ?? []).map((chart, index) => ({
    chart,
    area: { row: top + index * (lowChartRows + 1), column, rows: lowChartRows, columns },
  }));
}

function cautionLinesOf({ caution }: SheetDefinition): readonly string[] {
  return caution === undefined ? [] : caution.split("\n").flatMap((one) => linesOf(one, cautionWidth));
}

/** Where the n-th chart of a sheet of charts stands, its field in the row above. */
function chartPageArea(index: number, top: number): AreaPlan {
  return {
    row: top + 1 + Math.floor(index / 2) * (chartRows + 2),
    column: (index % 2) * 2,
    rows: chartRows,
    columns: 1,
  };
}

function placeChartPage(sheet: SheetDefinition, system: UnitSystem, content: LogContent): PlacedSheet {
  const cautionLines = cautionLinesOf(sheet);
  const top = 2 + cautionLines.length + 1;
  const areas = (sheet.charts ?? []).map((chart, index) => ({ chart, area: chartPageArea(index, top) }));
  const fields = sheet.fields.map((field, index): PlacedField => {
    const { row, column } = chartPageArea(index, top);
    return { field, sheet, row: row - 1, labelColumn: column, valueColumn: column, helpColumn: column };
  });
  return {
    sheet,
    headColumn: 0,
    cautionLines,
    columnWidths: widthsOf(sheet, system),
    fields,
    tables: placeTables(sheet, top, content),
    charts: areas,
  };
}

function placeSheet(sheet: SheetDefinition, system: UnitSystem, content: LogContent): PlacedSheet {
  if (sheet.arrangement === "charts") return placeChartPage(sheet, system, content);
  const widths = widthsOf(sheet, system);
  const cautionLines = cautionLinesOf(sheet);
  const firstField = 2 + cautionLines.length + 1;
  const fields = placeFields(sheet, firstField, widths, system);
  const last = fields.at(-1);
  if (last !== undefined && sheet.document !== true) {
    const needed = sheet.fields.some((field) => field.type === "text") ? 26 : 14;
    widths[last.valueColumn] = Math.max(widths[last.valueColumn] ?? 0, needed);
  }
  const afterFields = last === undefined ? firstField : last.row + 2;
  const charts = placeCharts(sheet, afterFields, widths);
  const under = charts.at(-1)?.area;
  return {
    sheet,
    headColumn: headColumnOf(sheet),
    cautionLines,
    columnWidths: widths,
    fields,
    tables: placeTables(sheet, under === undefined ? afterFields : under.row + under.rows + 1, content),
    charts,
  };
}

/** Decides where everything stands; no cell is written yet. */
export function place(log: LogDefinition, system: UnitSystem, content: LogContent): Placement {
  const sheets = log.sheets.map((sheet) => placeSheet(sheet, system, content));
  return {
    sheets,
    tables: new Map(sheets.flatMap((sheet) => sheet.tables.map((placed) => [placed.table.id, placed] as const))),
  };
}
