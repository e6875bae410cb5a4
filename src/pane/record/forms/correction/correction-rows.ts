/** Which rows of the log can be put right, and how a person tells them apart. */
import { dayWords, shortMoment } from "../../../../advice/wording/moments.ts";
import type { TableId } from "../../../../joblog/formula/log-types.ts";
import { jobLog } from "../../../../joblog/job-log.ts";
import { type AnyRow, isCellError, type LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import type { Draft } from "../../entry-form.ts";
import { describedColumn, inputColumns } from "../../fields-of.ts";

/** What is put right most often comes first; a table not named here follows in the order of the log. */
const oftenFirst: readonly TableId[] = [
  "readings",
  "additions",
  "loads",
  "items",
  "benchTests",
  "meterChecks",
  "care",
  "baths",
  "releases",
];

const place = (table: TableId): number => (oftenFirst.includes(table) ? oftenFirst.indexOf(table) : oftenFirst.length);

const correctable = jobLog.sheets
  .flatMap(({ tables }) => tables)
  .flatMap(({ id, entry }) => (entry === undefined ? [] : [{ table: id, ...entry }]))
  .sort((one, other) => place(one.table) - place(other.table));

export const tableKey = "entryTable";
export const rowKey = "entryRow";

const between = " · ";

function nameOf({ cells }: AnyRow, table: TableId, about: readonly string[]): string {
  const [key] = inputColumns(table);
  const { when } = cells;
  const time =
    typeof when !== "number"
      ? []
      : [describedColumn(table, "when").type === "date" ? dayWords(when) : shortMoment(when)];
  return [cells[key?.id ?? ""] ?? "no number", ...time, ...about.map((id) => cells[id] ?? "")]
    .filter((part) => part !== "")
    .map(String)
    .join(between);
}

/** The kinds of entry that the log holds any of. */
export function correctedKinds(log: LogSnapshot): readonly string[] {
  return correctable.filter(({ table }) => log.rows[table].length > 0).map(({ word }) => word);
}

export interface ChosenRow {
  readonly table: TableId;
  readonly row: AnyRow;
}

/** Rows of the chosen kind by the name they are offered under, the one written last first. Two of one name bear their place in the table. */
function rowsByName(log: LogSnapshot, kind: string | undefined): ReadonlyMap<string, ChosenRow> {
  const found = correctable.find(({ word }) => word === kind);
  const byName = new Map<string, ChosenRow>();
  if (found === undefined) return byName;
  const rows: readonly AnyRow[] = log.rows[found.table];
  const names = rows.map((row) => nameOf(row, found.table, found.about));
  for (const [index, row] of [...rows.entries()].reverse()) {
    const name = names[index] ?? "";
    const several = names.filter((one) => one === name).length > 1;
    byName.set(several ? `${name}${between}row ${String(row.position + 1)}` : name, { table: found.table, row });
  }
  return byName;
}

export function rowNames(log: LogSnapshot, values: Draft): readonly string[] {
  return [...rowsByName(log, values[tableKey]).keys()];
}

/** The row that a draft names. */
export function chosenRow(log: LogSnapshot, values: Draft): ChosenRow | undefined {
  return rowsByName(log, values[tableKey]).get(values[rowKey] ?? "");
}

/** The row's own key, or its place in the table. */
export function keyOfRow({ table, row }: ChosenRow): string {
  const key = row.cells[inputColumns(table)[0]?.id ?? ""];
  return key !== undefined && !isCellError(key) ? String(key) : `row ${String(row.position + 1)}`;
}
