import type { TableId } from "../formula/log-types.ts";
import type { ChartSeriesDefinition, LogDefinition } from "../model/definition.ts";
import type { CellPlan, ColumnRun } from "../model/plan.ts";
import type { PlacedSheet, PlacedTable } from "./placement.ts";

function columnsOfSeries(table: TableId, series: ChartSeriesDefinition): readonly string[] {
  return "column" in series
    ? [`${table}.${series.column}`]
    : [...series.x, ...series.y].map((column) => `${series.lineOf}.${column}`);
}

/** Columns that charts draw, as table and column: a spreadsheet draws no hidden cell. */
function drawnColumns({ sheets }: LogDefinition): ReadonlySet<string> {
  const charts = sheets.flatMap((sheet) => sheet.charts ?? []);
  return new Set(
    charts.flatMap(({ table, x, series }) => [
      `${table}.${x}`,
      ...series.flatMap((one) => columnsOfSeries(table, one)),
    ]),
  );
}

/** Whether the table has a helper in the sheet's column that may be out of sight; undefined where it does not reach there. */
function mayFold({ table, area }: PlacedTable, at: number, drawn: ReadonlySet<string>): boolean | undefined {
  const column = table.columns[at - area.column];
  if (at < area.column || column === undefined) return undefined;
  return column.role === "computed" && column.helper === true && !drawn.has(`${table.id}.${column.id}`);
}

function runsOf(columns: readonly number[]): readonly ColumnRun[] {
  const runs: ColumnRun[] = [];
  for (const column of columns) {
    const run = runs.at(-1);
    if (run?.last === column - 1) runs[runs.length - 1] = { first: run.first, last: column };
    else runs.push({ first: column, last: column });
  }
  return runs;
}

/** Columns right of the printed ones that hold helpers and nothing else. */
export function foldedColumns(
  { tables, columnWidths }: PlacedSheet,
  log: LogDefinition,
  lastPrinted: number,
  cells: readonly CellPlan[],
): readonly ColumnRun[] {
  const drawn = drawnColumns(log);
  const isOfTable = ({ row, column }: CellPlan): boolean =>
    tables.some(
      ({ area }) =>
        row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns,
    );
  const others = new Set(cells.filter((cell) => !isOfTable(cell)).map(({ column }) => column));
  const right = columnWidths.map((_, column) => column).slice(lastPrinted + 1);
  return runsOf(
    right.filter((column) => {
      const said = tables.flatMap((table) => mayFold(table, column, drawn) ?? []);
      return said.length > 0 && said.every(Boolean) && !others.has(column);
    }),
  );
}
