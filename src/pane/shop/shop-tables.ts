import { jobLog } from "../../joblog/job-log.ts";
import type { Cells, InputColumn } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot, SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { findTable } from "../../joblog/model/references.ts";
import { isSameText } from "../../joblog/model/same-text.ts";

/** The lists that the other sheets look up. */
export const shopTables = [
  "tanks",
  "waters",
  "concentrates",
  "people",
  "claims",
  "stockBalance",
  "keepOutWords",
] as const;

export type ShopTable = (typeof shopTables)[number];

/** A list's name and what one of it is called. */
export const tableWords: Readonly<Record<ShopTable, { readonly all: string; readonly one: string }>> = {
  tanks: { all: "Tanks", one: "tank" },
  waters: { all: "Waters", one: "water" },
  concentrates: { all: "Concentrates", one: "concentrate" },
  people: { all: "People", one: "person" },
  claims: { all: "Claims", one: "claim" },
  stockBalance: { all: "Reordering", one: "reorder rule" },
  keepOutWords: { all: "Words that keep a piece out", one: "word" },
};

export function inputsOf(table: ShopTable): readonly InputColumn[] {
  return findTable(jobLog, table).columns.filter((column) => column.role === "input");
}

/** The column that tells a row from the others: its own key, or the required one that it adds to. Throws a RangeError for a table without one. */
export function keyColumn(table: ShopTable): InputColumn {
  const inputs = inputsOf(table);
  const key = inputs.find((column) => column.key === true) ?? inputs.find(({ required }) => required);
  if (key === undefined) throw new RangeError(`Table ${table} has no key.`);
  return key;
}

export function keysOf(log: LogSnapshot, table: ShopTable): readonly string[] {
  const { id } = keyColumn(table);
  const rows: readonly AnyRow[] = log.rows[table];
  return rows.flatMap(({ cells }) => cells[id] ?? []).map(String);
}

/** The row of that key. */
export function shopRow<Table extends ShopTable>(
  log: LogSnapshot,
  table: Table,
  key: string,
): SnapshotRow<Table> | undefined {
  const { id } = keyColumn(table);
  return log.rows[table].find(({ cells }) => {
    const held: Cells = cells;
    return held[id] !== undefined && isSameText(String(held[id]), key);
  });
}
