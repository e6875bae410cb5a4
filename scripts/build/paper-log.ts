import { checkedLog } from "../../src/advice/checked-log.ts";
import type { LogEdit } from "../../src/excel/record/log-edit.ts";
import type { TableId } from "../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import { typedContent } from "../../src/joblog/layout/typed-content.ts";
import type { Cells } from "../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import { findTable } from "../../src/joblog/model/references.ts";
import type { WeekBook } from "../../src/pane/demo/play-week.ts";

type AnyRows = Record<TableId, readonly AnyRow[]>;

const keyOf = (table: TableId): string => findTable(jobLog, table).columns[0]?.id ?? "";

const afterOf = (cells: Readonly<Record<string, { readonly after: Cells[string] }>>): Cells =>
  Object.fromEntries(Object.entries(cells).map(([id, { after }]) => [id, after]));

const filledIn = (cells: Cells): Cells =>
  Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== undefined));

/** What was typed once an edit is written; its new rows keep the numbers that they were given. */
export function afterEdit(
  log: LogSnapshot,
  { rows: added = [], fills = [], changes = [], fields = {} }: LogEdit,
): LogSnapshot {
  const rows: AnyRows = { ...log.rows };
  const change = (table: TableId, isMeant: (row: AnyRow) => boolean, cells: Cells): void => {
    if (!rows[table].some(isMeant)) throw new RangeError(`${table} has no such row.`);
    rows[table] = rows[table].map((row) => (isMeant(row) ? { ...row, cells: { ...row.cells, ...cells } } : row));
  };
  for (const { table, key, cells } of fills) change(table, (row) => row.cells[keyOf(table)] === key, filledIn(cells));
  for (const { table, position, cells } of changes) change(table, (row) => row.position === position, afterOf(cells));
  for (const { table, row } of added) {
    const last = rows[table].at(-1)?.position ?? -1;
    rows[table] = [...rows[table], { position: last + 1, cells: row }];
  }
  return { fields: { ...log.fields, ...afterOf(fields) }, rows: rows };
}

/**
 * A log without a workbook: it holds what is typed, and its figures are worked out when a form asks for them. For one
 * writer, who gives each row the next number.
 */
export function paperBook(): WeekBook {
  let typed: LogSnapshot | undefined;
  const begun = (): LogSnapshot => {
    if (typed === undefined) throw new Error("The log is not begun.");
    return typed;
  };
  return {
    begin: (system, shop) => {
      typed = typedContent(system, shop);
      return Promise.resolve();
    },
    record: (edit) => {
      typed = afterEdit(begun(), edit);
      return Promise.resolve();
    },
    present: () => Promise.resolve(checkedLog(begun()).log),
  };
}
