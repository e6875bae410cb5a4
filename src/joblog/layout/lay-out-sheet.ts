import { arithmeticAid } from "../../core/safety/cautions.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { TableId } from "../formula/log-types.ts";
import type {
  Cells,
  ChartDefinition,
  ChartSeriesDefinition,
  LogContent,
  LogDefinition,
  SheetDefinition,
} from "../model/definition.ts";
import { headerOf } from "../model/headers.ts";
import type { AreaPlan, CellPlan, ChartPlan, ChartSeriesPlan, SheetPlan, TablePlan } from "../model/plan.ts";
import { fieldCells } from "./field-cells.ts";
import { foldedColumns } from "./folded-columns.ts";
import { linesOf } from "./line-breaks.ts";
import { type PlacedSheet, type PlacedTable, type Placement, printedColumns } from "./placement.ts";
import { fieldSignals, tableSignals } from "./signal-plans.ts";
import { tableCells } from "./table-cells.ts";
import { tableColumns } from "./table-columns.ts";
import { columnArea, fieldValidation, tableValidations } from "./validation-plans.ts";

/** Rows frozen at the top must leave room to scroll on a small screen. */
const mostFrozenRows = 11;

const linePoints = 13;

/** A width counts digits; bold letters of running text are narrower on average. */
const lettersByDigit = 1.15;

const titlePoints = 22;

function headCells({ sheet, cautionLines, headColumn: column }: PlacedSheet): readonly CellPlan[] {
  return [
    { row: 0, column, style: "title", kind: "value", value: sheet.title },
    { row: 1, column, style: "purpose", kind: "value", value: sheet.purpose },
    ...cautionLines.map((line, index): CellPlan => ({
      row: 2 + index,
      column,
      style: "caution",
      kind: "value",
      value: line,
    })),
  ];
}

/** Characters that the longest title takes, in its size. */
const titleCharacters = 50;

/** In the title's row, right of it: a sheet opened without the add-in shows #NAME? where something changed. */
function addInNote({ headColumn, columnWidths }: PlacedSheet, cells: readonly CellPlan[]): readonly CellPlan[] {
  if (!cells.some((cell) => cell.kind === "formula" && cell.formula.includes("BATH."))) return [];
  let column = headColumn;
  for (let room = 0; room < titleCharacters && column < columnWidths.length - 1; column += 1)
    room += columnWidths[column] ?? titleCharacters;
  return [{ row: 0, column, style: "fieldHelp", kind: "value", value: "Cells with #NAME? need the Bathsheet add-in." }];
}

function headingOfFirst([first]: ChartDefinition["series"], { table }: PlacedTable, system: UnitSystem): string {
  const column = table.columns.find(({ id }) => first !== undefined && "column" in first && id === first.column);
  return column === undefined ? "" : headerOf(column, system);
}

function placedTable(placement: Placement, table: TableId): PlacedTable {
  const placed = placement.tables.get(table);
  if (placed === undefined) throw new RangeError(`The log has no table "${table}".`);
  return placed;
}

/** Two cells side by side in one line of a table. */
function pairArea(placed: PlacedTable, line: number, [from, to]: readonly [string, string]): AreaPlan {
  const [first, last] = [columnArea(placed, from), columnArea(placed, to)];
  if (last.column !== first.column + 1) throw new RangeError(`The columns "${from}" and "${to}" are not side by side.`);
  return { row: first.row + line - 1, column: first.column, rows: 1, columns: 2 };
}

function seriesAreas(
  series: ChartSeriesDefinition,
  chart: ChartDefinition,
  placement: Placement,
): Pick<ChartSeriesPlan, "dataSheet" | "x" | "y"> {
  const data = placedTable(placement, "column" in series ? chart.table : series.lineOf);
  const dataSheet = data.sheet.name;
  if ("column" in series) return { dataSheet, x: columnArea(data, chart.x), y: columnArea(data, series.column) };
  return { dataSheet, x: pairArea(data, series.line, series.x), y: pairArea(data, series.line, series.y) };
}

function chartPlans(placed: PlacedSheet, placement: Placement, system: UnitSystem): readonly ChartPlan[] {
  return placed.charts.map(({ chart, area }): ChartPlan => {
    const { id, kind, title, xTitle, xFormat, yFormat, yFrom } = chart;
    const series = chart.series.map((one) => ({
      label: one.label,
      color: one.color,
      mark: one.mark,
      ...seriesAreas(one, chart, placement),
    }));
    const yTitle = chart.yTitle ?? headingOfFirst(chart.series, placedTable(placement, chart.table), system);
    return {
      id,
      kind,
      title,
      area,
      xTitle,
      xFormat,
      yTitle,
      yFormat,
      ...(yFrom === undefined ? {} : { yFrom }),
      series,
    };
  });
}

function headerHeight(table: TablePlan, widths: readonly number[]): { readonly row: number; readonly points: number } {
  const lines = table.columns.map(
    (column, index) =>
      linesOf(column.header, Math.floor((widths[table.area.column + index] ?? 10) * lettersByDigit)).length,
  );
  return { row: table.area.row, points: Math.max(...lines) * linePoints + 3 };
}

function frozenRows({ arrangement }: SheetDefinition, tables: readonly TablePlan[]): number {
  const [only] = tables;
  if (arrangement === "charts" || only === undefined || tables.length > 1) return 0;
  const rows = only.area.row + 1;
  return rows <= mostFrozenRows ? rows : 0;
}

/** Headings of the table that goes on over the pages: only the last one of a sheet does. */
function titleRows(
  { arrangement, document, tables }: SheetDefinition,
  plans: readonly TablePlan[],
): Pick<SheetPlan, "titleRows"> {
  const row = plans.at(-1)?.area.row;
  const goesOn = tables.at(-1)?.fixedRows !== true && (tables.length === 1 || arrangement === "stacked");
  if (row === undefined || !goesOn || arrangement === "charts" || document === true) return {};
  return { titleRows: { first: row, last: row } };
}

function pageBreaks({ tables }: PlacedSheet): Pick<SheetPlan, "pageBreaks"> {
  const rows = tables.filter(({ table }) => table.newPage === true).map((one) => one.caption?.row ?? one.area.row);
  return rows.length === 0 ? {} : { pageBreaks: rows };
}

/** Tables under each other share their columns; of tables side by side all are printed. */
function lastPrintedColumn({ sheet, columnWidths, charts }: PlacedSheet): number {
  if (sheet.arrangement === "charts") return Math.max(...charts.map(({ area }) => area.column + area.columns)) - 1;
  if (sheet.tables.length === 0 || (sheet.tables.length > 1 && sheet.arrangement === "side by side"))
    return columnWidths.length - 1;
  return printedColumns(sheet) - 1;
}

/** One sheet of the log, to the cell. */
export function laidOutSheet(
  placed: PlacedSheet,
  log: LogDefinition,
  system: UnitSystem,
  content: LogContent,
  placement: Placement,
): SheetPlan {
  const { sheet, columnWidths } = placed;
  const held: Cells = content.fields;
  const tables = placed.tables.map((one): TablePlan => ({
    id: one.table.id,
    name: one.table.name,
    area: one.area,
    columns: tableColumns(log, one.table, system),
  }));
  const worked = [
    ...placed.fields.flatMap((one) => fieldCells(one, log, system, held[one.field.id])),
    ...placed.tables.flatMap((one, index) =>
      tableCells(one, tables[index]?.columns ?? [], content.rows[one.table.id] ?? []),
    ),
  ];
  const cells = [...headCells(placed), ...addInNote(placed, worked), ...worked];
  const frozen = frozenRows(sheet, tables);
  const lastPrinted = lastPrintedColumn(placed);
  const folded = foldedColumns(placed, log, lastPrinted, cells);
  return {
    id: sheet.id,
    name: sheet.name,
    tabColor: sheet.tabColor,
    columnWidths,
    rowHeights: [{ row: 0, points: titlePoints }, ...tables.map((table) => headerHeight(table, columnWidths))],
    cells,
    tables,
    validations: [
      ...placed.fields.flatMap((one) => fieldValidation(one, placement, system) ?? []),
      ...placed.tables.flatMap((one) => tableValidations(one, placement, system)),
    ],
    conditionalFormats: [...placed.fields.flatMap(fieldSignals), ...placed.tables.flatMap(tableSignals)],
    charts: chartPlans(placed, placement, system),
    frozenRows: frozen,
    orientation: sheet.orientation,
    footer: arithmeticAid,
    ...titleRows(sheet, tables),
    ...pageBreaks(placed),
    lastPrintedColumn: lastPrinted,
    ...(folded.length === 0 ? {} : { folded }),
    pagesWide: sheet.pagesWide,
    ...(sheet.arrangement === "charts" ? { onePage: true } : {}),
  };
}
