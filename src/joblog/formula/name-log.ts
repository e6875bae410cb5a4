import type { LogDefinition, TableDefinition } from "../model/definition.ts";
import type { Column, Expression } from "./expression.ts";
import type { Log } from "./log-names.ts";

type RowNames = Readonly<Record<string, Expression>>;

const rowNamesOf = new WeakMap<TableDefinition, RowNames>();

/** This row's cells of a table; made once for each description. */
export function rowNames(table: TableDefinition): RowNames {
  const names: RowNames =
    rowNamesOf.get(table) ?? Object.fromEntries(table.columns.map(({ id }) => [id, { kind: "here", column: id }]));
  rowNamesOf.set(table, names);
  return names;
}

/** A named cell whose id only the description knows; laying out refuses one that the log does not have. */
export const namedCell = (field: string): Expression => ({ kind: "named", field });

const namesOf = new WeakMap<LogDefinition, Log>();

/** The names of a whole log; made once for each description. */
export function logNames(log: LogDefinition): Log {
  const known = namesOf.get(log);
  if (known !== undefined) return known;
  const tables = log.sheets
    .flatMap((sheet) => sheet.tables)
    .map((table) => [
      table.id,
      Object.fromEntries(
        table.columns.map(({ id }): [string, Column] => [id, { kind: "column", table: table.id, column: id }]),
      ),
    ]);
  const fields = log.sheets.flatMap((sheet) => sheet.fields);
  const named = Object.fromEntries(fields.map(({ id }): [string, Expression] => [id, namedCell(id)]));
  // The types are written from the same description.
  const names = { ...Object.fromEntries(tables), named } as Log;
  namesOf.set(log, names);
  return names;
}
