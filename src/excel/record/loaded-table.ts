import { unitSystems } from "../../core/units/unit-system.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { ColumnDefinition, LogDefinition, TableDefinition } from "../../joblog/model/definition.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import { logTables } from "../table-columns.ts";

/** One column of the log as one read trip found it; a null object under the header of another unit system. */
export interface LoadedColumn {
  readonly column: ColumnDefinition;
  readonly range: Excel.Range;
}

/** What one read trip finds of a table, whatever is to be done with it. */
export interface LoadedTable {
  readonly definition: TableDefinition;
  readonly sheet: string;
  readonly worksheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly headers: Excel.Range;
  readonly body: Excel.Range;
  /** The column by which rows are known; numbers that are taken stand in it. */
  readonly keys: readonly LoadedColumn[];
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

/** Asks for the values of a column. */
export function loadColumn(table: Excel.Table, column: ColumnDefinition): readonly LoadedColumn[] {
  return columnBodies(table, column).map((range) => ({ column, range: range.load("values") }));
}

/** Asks for a table's headings, its keys and its sheet's lock; of its body nothing yet. */
export function loadTable(context: Excel.RequestContext, log: LogDefinition, id: TableId): LoadedTable {
  const { table: definition, sheet } = tableOf(log, id);
  const table = context.workbook.tables.getItem(definition.name);
  const { worksheet } = table;
  worksheet.load("name");
  worksheet.protection.load("protected");
  return {
    definition,
    sheet: sheet.name,
    worksheet,
    table,
    headers: table.getHeaderRowRange().load("values"),
    body: table.getDataBodyRange(),
    keys: definition.columns.slice(0, 1).flatMap((column) => loadColumn(table, column)),
  };
}

/** What a column holds; nothing where the table has it no longer. */
export function columnValues(loaded: readonly LoadedColumn[]): readonly unknown[] {
  const found = loaded.find(({ range }) => !range.isNullObject);
  return found === undefined ? [] : found.range.values.map((line): unknown => line[0]);
}
