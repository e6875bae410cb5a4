import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { findTable } from "../../joblog/model/references.ts";
import { numbersAfter } from "../../joblog/model/running-number.ts";
import { folded } from "../../joblog/model/same-text.ts";

/** A table whose rows bear running numbers. */
export type NumberedTable = { readonly [Table in TableId]: "id" extends ColumnId<Table> ? Table : never }[TableId];

/** The next `count` running numbers of a table, in the style of its highest one. */
export function nextIds(log: LogSnapshot, table: NumberedTable, count: number): readonly string[] {
  const letter = findTable(jobLog, table).entry?.letter;
  if (letter === undefined) throw new RangeError(`Rows of ${table} bear no running number.`);
  const rows: readonly AnyRow[] = log.rows[table];
  return numbersAfter(
    rows.map(({ cells }) => String(cells["id"] ?? "")),
    letter,
    count,
  );
}

/** A bath id that no fill has yet: tank and day, and a letter where the tank was filled twice that day. */
export function proposedBathId(log: LogSnapshot, tank: string, opened: string): string {
  const [, month = "", day = ""] = /^\d{4}-(\d{2})-(\d{2})/.exec(opened) ?? [];
  const base = `B-${tank}-${month}${day}`;
  const taken = new Set(log.rows.baths.map((row) => folded(String(row.cells.bath ?? ""))));
  if (!taken.has(folded(base))) return base;
  for (let code = "b".charCodeAt(0); code <= "z".charCodeAt(0); code += 1) {
    const id = base + String.fromCharCode(code);
    if (!taken.has(folded(id))) return id;
  }
  return base;
}
