/** Which rows of the log can be put right, and how a person tells them apart. */
import { fieldTextOf, shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { TableId } from "../../../../joblog/formula/log-types.ts";
import { type AnyRow, isCellError, type LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import type { Draft } from "../../entry-form.ts";
import { describedColumn, inputColumns } from "../../fields-of.ts";

type CorrectedTable = {
  readonly [Table in TableId]: {
    readonly table: Table;
    readonly word: string;
    /** Columns that tell a row from its neighbors, beside its key and its time. */
    readonly about: readonly ColumnId<Table>[];
  };
}[TableId];

const tables = [
  { table: "readings", word: "Reading", about: ["bath", "ph"] },
  { table: "additions", word: "Addition", about: ["bath", "kind", "amount"] },
  { table: "loads", word: "Load", about: ["bath", "claim"] },
  { table: "items", word: "Item", about: ["claim", "item"] },
  { table: "benchTests", word: "Bench test", about: ["bath", "surface"] },
  { table: "meterChecks", word: "Meter check", about: ["meter"] },
  { table: "care", word: "Care", about: ["bath", "kind"] },
  { table: "baths", word: "Bath", about: ["tank"] },
  { table: "releases", word: "Release", about: ["bath"] },
  { table: "stockMoves", word: "Stock line", about: ["concentrate", "kind"] },
  { table: "costLines", word: "Cost line", about: ["what"] },
] as const satisfies readonly CorrectedTable[];

/** A table whose rows can be put right. */
export type CorrectedId = (typeof tables)[number]["table"];

export const tableKey = "entryTable";
export const rowKey = "entryRow";

const between = " · ";

function nameOf({ cells }: AnyRow, table: CorrectedId, about: readonly string[]): string {
  const [key] = inputColumns(table);
  const { when } = cells;
  const time =
    typeof when !== "number"
      ? []
      : [describedColumn(table, "when").type === "date" ? fieldTextOf(when).slice(0, 10) : shortMoment(when)];
  return [cells[key?.id ?? ""] ?? "no number", ...time, ...about.map((id) => cells[id] ?? "")]
    .filter((part) => part !== "")
    .map(String)
    .join(between);
}

/** The kinds of entry that the log holds any of. */
export function correctedKinds(log: LogSnapshot): readonly string[] {
  return tables.filter(({ table }) => log.rows[table].length > 0).map(({ word }) => word);
}

export interface ChosenRow {
  readonly table: CorrectedId;
  readonly row: AnyRow;
}

/** Rows of the chosen kind by the name they are offered under, the one written last first. Two of one name bear their place in the table. */
function rowsByName(log: LogSnapshot, kind: string | undefined): ReadonlyMap<string, ChosenRow> {
  const found = tables.find(({ word }) => word === kind);
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
