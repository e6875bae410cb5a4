import type { InputColumn } from "../../joblog/definition.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { LogSnapshot } from "../../joblog/log-snapshot.ts";
import { findTable } from "../../joblog/references.ts";

/** The lists that the other sheets look up. */
export const shopTables = ["tanks", "waters", "concentrates", "people", "claims"] as const;

export type ShopTable = (typeof shopTables)[number];

/** A list's name and what one of it is called. */
export const tableWords: Readonly<Record<ShopTable, { readonly all: string; readonly one: string }>> = {
  tanks: { all: "Tanks", one: "tank" },
  waters: { all: "Waters", one: "water" },
  concentrates: { all: "Concentrates", one: "concentrate" },
  people: { all: "People", one: "person" },
  claims: { all: "Claims", one: "claim" },
};

export function inputsOf(table: ShopTable): readonly InputColumn[] {
  return findTable(jobLog, table).columns.filter((column) => column.role === "input");
}

/** The column by which other rows find a row. Throws a RangeError for a table without one. */
export function keyColumn(table: ShopTable): InputColumn {
  const key = inputsOf(table).find((column) => column.key === true);
  if (key === undefined) throw new RangeError(`Table ${table} has no key.`);
  return key;
}

export function keysOf(log: LogSnapshot, table: ShopTable): readonly string[] {
  const { id } = keyColumn(table);
  return log.rows[table].flatMap(({ cells }) => cells[id] ?? []).map(String);
}
