import type { Receipt } from "../../../src/excel/record/receipt.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { Cells } from "../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";

/** The typed rows of every table, wherever they stand. */
export type TypedRows = ReadonlyMap<TableId, readonly Cells[]>;

const tables = jobLog.sheets.flatMap((sheet) => sheet.tables).filter(({ fixedRows }) => fixedRows !== true);

const inputsOf = (table: TableId): readonly string[] =>
  tables
    .filter(({ id }) => id === table)
    .flatMap(({ columns }) => columns.filter(({ role }) => role === "input").map(({ id }) => id));

function typedOf(table: TableId, cells: Cells): Cells {
  return Object.fromEntries(
    inputsOf(table).flatMap((id) => (cells[id] === undefined ? [] : [[id, cells[id]] as const])),
  );
}

export function typedRows({ rows }: LogSnapshot): TypedRows {
  return new Map(
    tables.map(({ id }) => {
      const lines: readonly AnyRow[] = rows[id];
      return [id, lines.map(({ cells }) => typedOf(id, cells))];
    }),
  );
}

const keyOf = (table: TableId): string => inputsOf(table)[0] ?? "";

/** Rows in an order that does not depend on where they stand. */
export function listed(rows: TypedRows): readonly string[] {
  return [...rows].flatMap(([table, lines]) => lines.map((cells) => `${table} ${JSON.stringify(cells)}`)).sort();
}

function changed(rows: readonly Cells[], key: string, value: unknown, cells: Cells): readonly Cells[] {
  const at = rows.findIndex((row) => row[key] === value);
  return rows.map((row, index) => (index === at ? { ...row, ...cells } : row));
}

/** What the log has to hold once an entry is written: the rows before, and what its receipt says. */
export function withReceipt(before: TypedRows, { rows, fills, changes }: Receipt): TypedRows {
  const after = new Map(before);
  for (const { table, key, cells } of fills)
    after.set(table, changed(after.get(table) ?? [], keyOf(table), key, cells));
  for (const { table, cells } of changes) {
    const now = Object.fromEntries(Object.entries(cells).map(([id, cell]) => [id, cell.after]));
    after.set(table, changed(after.get(table) ?? [], keyOf(table), cells[keyOf(table)]?.before, now));
  }
  for (const { table, cells } of rows) after.set(table, [...(after.get(table) ?? []), typedOf(table, cells)]);
  return new Map([...after].map(([table, lines]) => [table, lines.map((cells) => typedOf(table, cells))]));
}

/** Numbers that stand twice in a table of running numbers. */
export function doubleNumbers(rows: TypedRows): readonly string[] {
  return tables.flatMap(({ id, entry }) => {
    if (entry?.letter === undefined) return [];
    const numbers = (rows.get(id) ?? []).flatMap((cells) => (cells["id"] === undefined ? [] : [String(cells["id"])]));
    return numbers.filter((number, index) => numbers.indexOf(number) !== index).map((number) => `${id} ${number}`);
  });
}
