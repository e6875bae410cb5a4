import type { ColumnDefinition, LogDefinition, LogRow, RowValue, TableDefinition, TableId } from "../joblog/definition.ts";
import { referencesFor } from "../joblog/references.ts";
import type { UnitSystem } from "../core/units/unit-system.ts";
import { cellValue } from "./cell-text.ts";
import { LogProblem } from "./office-problems.ts";
import { columnPositions, logTables } from "./table-columns.ts";

/** A row for one of the log's tables. */
export interface NewRow {
  readonly table: TableId;
  readonly row: LogRow;
}

/** Cells of an earlier row, found by its key in the table's first column, that are filled in if they are blank. */
export interface BlankFill {
  readonly table: TableId;
  readonly key: string;
  readonly cells: LogRow;
}

/** A table as one read trip found it, and what is to go into it. */
export interface Ground {
  readonly definition: TableDefinition;
  readonly sheet: string;
  readonly worksheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly headers: Excel.Range;
  readonly body: Excel.Range;
  readonly below: Excel.Range;
  readonly rows: readonly LogRow[];
  readonly fills: readonly BlankFill[];
}

/** `null` leaves a cell as it is. */
type Line = (RowValue | null)[];

/** Asks for everything that planning needs; readable after the next sync. */
export function loadGround(context: Excel.RequestContext, log: LogDefinition, table: TableId, rows: readonly LogRow[], fills: readonly BlankFill[]): Ground {
  const found = logTables(log).find((one) => one.table.id === table);
  if (found === undefined) throw new RangeError(`The log has no table ${table}.`);
  const excelTable = context.workbook.tables.getItem(found.table.name);
  const { worksheet } = excelTable;
  worksheet.load("name");
  worksheet.protection.load("protected");
  const body = excelTable.getDataBodyRange();
  body.load("values,rowIndex,columnIndex,rowCount,columnCount");
  return {
    definition: found.table,
    sheet: found.sheet.name,
    worksheet,
    table: excelTable,
    headers: excelTable.getHeaderRowRange().load("values"),
    body,
    below: body.getRowsBelow(Math.max(1, rows.length)).load("values"),
    rows,
    fills,
  };
}

function refuseIfLocked(ground: Ground): void {
  if (!ground.worksheet.protection.protected) return;
  throw new LogProblem({
    what: `The sheet ${ground.worksheet.name} is protected, so nothing was written.`,
    remedy: "Unprotect it (Review, Unprotect Sheet), then try again. Your entry stays here.",
  });
}

function lineOf(
  ground: Ground,
  row: LogRow,
  positions: ReadonlyMap<ColumnDefinition, number>,
  log: LogDefinition,
  system: UnitSystem,
): Line {
  const references = referencesFor(log, ground.definition, system);
  const line: Line = Array.from({ length: ground.body.columnCount }, () => null);
  for (const [column, at] of positions) {
    if (column.role === "computed") line[at] = column.formula(references);
    else {
      const value = row[column.id];
      if (value !== undefined) line[at] = cellValue(value);
    }
  }
  return line;
}

/** Data rows, counted from 0, that hold nothing a person has typed. */
function freeRows(ground: Ground, positions: ReadonlyMap<ColumnDefinition, number>): number[] {
  const inputs = [...positions].filter(([column]) => column.role === "input").map(([, at]) => at);
  return ground.body.values.flatMap((line, index) => (inputs.every((at) => line[at] === "") ? [index] : []));
}

function refuseIfNoRoom({ definition, worksheet, body, below }: Ground, extra: number): void {
  const firstBelow = body.rowIndex + body.rowCount + 1;
  if (below.values.slice(0, extra).some((line) => line.some((value) => value !== ""))) {
    throw new LogProblem({
      what: `The table ${definition.name} is full, and the cells under it on sheet ${worksheet.name} are not blank. Nothing was written.`,
      remedy: `On that sheet, right-click row number ${String(firstBelow)}, choose Insert to make room under the table, then try again. Your entry stays here.`,
    });
  }
}

interface CellFill {
  readonly index: number;
  readonly at: number;
  readonly value: RowValue;
}

function planFills(ground: Ground, positions: ReadonlyMap<ColumnDefinition, number>): readonly CellFill[] {
  const [key] = [...positions.values()];
  return ground.fills.flatMap((fill) => {
    const index = ground.body.values.findIndex((line) => key !== undefined && String(line[key]) === fill.key);
    return [...positions].flatMap(([column, at]) => {
      const value = fill.cells[column.id];
      const blank = ground.body.values[index]?.[at] === "";
      return value !== undefined && blank ? [{ index, at, value: cellValue(value) }] : [];
    });
  });
}

/** Which lines go where; `extra` is how far the table must grow. */
export interface PlannedTable {
  readonly ground: Ground;
  readonly extra: number;
  readonly lines: readonly { readonly index: number; readonly line: Line }[];
  readonly fills: readonly CellFill[];
}

/** Throws a LogProblem where the sheet is protected, a column is missing or there is no room below. */
export function planTable(ground: Ground, log: LogDefinition, system: UnitSystem): PlannedTable {
  refuseIfLocked(ground);
  const positions = columnPositions(ground.definition, ground.sheet, ground.headers.values[0] ?? [], system);
  const free = freeRows(ground, positions);
  const extra = Math.max(0, ground.rows.length - free.length);
  refuseIfNoRoom(ground, extra);
  const added = Array.from({ length: extra }, (_, index) => ground.body.rowCount + index);
  const places = [...free, ...added];
  const lines = ground.rows.flatMap((row, index) => {
    const place = places[index];
    return place === undefined ? [] : [{ index: place, line: lineOf(ground, row, positions, log, system) }];
  });
  return { ground, extra, lines, fills: planFills(ground, positions) };
}
