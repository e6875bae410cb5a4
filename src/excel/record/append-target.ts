import { unitSystems } from "../../core/units/unit-system.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells, ColumnDefinition, LogDefinition, LogRow, TableDefinition } from "../../joblog/model/definition.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import { LogProblem } from "../office-problems.ts";
import { logTables } from "../table-columns.ts";

/** Cells of an earlier row, found by its key in the table's first column, that are filled in if they are blank. */
export type BlankFill = {
  readonly [Table in TableId]: { readonly table: Table; readonly key: string; readonly cells: LogRow<Table> };
}[TableId];

/** What is filled in of a row, whichever table it stands in. */
interface RowFill {
  readonly key: string;
  readonly cells: Cells;
}

/** One column of the log as one read trip found it; a null object under the header of another unit system. */
export interface LoadedColumn {
  readonly column: ColumnDefinition;
  readonly range: Excel.Range;
}

/** A table as one read trip found it, and what is to go into it. Of its cells only a few are read, however long it is. */
export interface AppendTarget {
  readonly definition: TableDefinition;
  readonly sheet: string;
  readonly worksheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly headers: Excel.Range;
  readonly body: Excel.Range;
  readonly below: Excel.Range;
  /** The part of each input column that holds something, by its extent alone. */
  readonly used: readonly LoadedColumn[];
  /** Whole columns, only those that a fill fills in. */
  readonly read: readonly LoadedColumn[];
  /** The column by which rows are known; numbers that are taken stand in it. */
  readonly keys: readonly LoadedColumn[];
  readonly rows: readonly Cells[];
  readonly fills: readonly RowFill[];
}

/** The table and its sheet. Throws a RangeError where the log has none of that id. */
export function tableOf(log: LogDefinition, id: TableId): ReturnType<typeof logTables>[number] {
  const found = logTables(log).find((one) => one.table.id === id);
  if (found === undefined) throw new RangeError(`The log has no table ${id}.`);
  return found;
}

/** A column under every header that it can have: which one counts is known with the log's unit system. */
export function columnBodies(table: Excel.Table, column: ColumnDefinition): readonly Excel.Range[] {
  const headers = new Set(unitSystems.map((system) => headerOf(column, system)));
  return [...headers].map((header) => table.columns.getItemOrNullObject(header).getDataBodyRange());
}

function loadColumn(table: Excel.Table, column: ColumnDefinition): readonly LoadedColumn[] {
  return columnBodies(table, column).map((range) => ({ column, range: range.load("values") }));
}

/** Asks for the first column of a table, where the keys of its rows stand. */
export function loadKeys(table: Excel.Table, { columns }: TableDefinition): readonly LoadedColumn[] {
  return columns.slice(0, 1).flatMap((column) => loadColumn(table, column));
}

/** What a column holds; nothing where the table has it no longer. */
export function columnValues(loaded: readonly LoadedColumn[]): readonly unknown[] {
  const found = loaded.find(({ range }) => !range.isNullObject);
  return found === undefined ? [] : found.range.values.map((line): unknown => line[0]);
}

/** Asks for everything that planning needs; readable after the next sync. */
export function loadAppendTarget(
  context: Excel.RequestContext,
  log: LogDefinition,
  id: TableId,
  rows: readonly Cells[],
  fills: readonly RowFill[],
): AppendTarget {
  const found = tableOf(log, id);
  const table = context.workbook.tables.getItem(found.table.name);
  const { worksheet } = table;
  worksheet.load("name");
  worksheet.protection.load("protected");
  const body = table.getDataBodyRange().load("rowIndex,rowCount,columnCount");
  const inputs = rows.length === 0 ? [] : found.table.columns.filter(({ role }) => role === "input");
  const looked = found.table.columns.filter((column) => fills.some(({ cells }) => cells[column.id] !== undefined));
  return {
    definition: found.table,
    sheet: found.sheet.name,
    worksheet,
    table,
    headers: table.getHeaderRowRange().load("values"),
    body,
    below: body.getRowsBelow(Math.max(1, rows.length)).load("values"),
    used: inputs.flatMap((column) =>
      columnBodies(table, column).map((range) => ({
        column,
        range: range.getUsedRangeOrNullObject(true).load("rowIndex,rowCount"),
      })),
    ),
    read: looked.flatMap((column) => loadColumn(table, column)),
    keys: loadKeys(table, found.table),
    rows,
    fills,
  };
}

/** Throws a LogProblem where the sheet is protected. */
export function refuseIfLocked(worksheet: Excel.Worksheet): void {
  if (!worksheet.protection.protected) return;
  throw new LogProblem({
    what: `The sheet ${worksheet.name} is protected, so nothing was written.`,
    remedy: "Unprotect it (Review, Unprotect Sheet), then try again. Your entry stays here.",
  });
}

/** Throws a LogProblem where the workbook cannot be written. */
export function refuseIfReadOnly(workbook: Excel.Workbook): void {
  if (!workbook.readOnly) return;
  throw new LogProblem({
    what: "This workbook is open for reading only.",
    remedy: "Save a copy (File, Save a Copy) and record there. Your entry stays here.",
  });
}
