import { figure } from "../../advice/wording/figures.ts";
import { fieldTextOf } from "../../advice/wording/moments.ts";
import type { CellChange } from "../../excel/record/cell-changes.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { Cells, RowValue } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { limitOf } from "./limit-fields.ts";
import type { ShopFileReading } from "./read-shop-file.ts";
import { type FileTable, fileTables } from "./shop-file.ts";
import { inputsOf, keyColumn, shopRow, tableWords } from "./shop-tables.ts";

type Shop = Extract<ShopFileReading, { readonly read: "shop" }>;

/** What an import would change, a line each, and the one batch that does it. */
export interface ImportPlan {
  readonly lines: readonly string[];
  readonly changes: LogEdit;
}

function spoken(value: RowValue | undefined, type: string): string {
  if (value === undefined) return "blank";
  if (typeof value !== "number") return String(value);
  return type === "date" ? fieldTextOf(value).slice(0, 10) : figure(value, 4);
}

/** Only what the file says is changed: a cell or row that it lacks stays as it is. */
function differing(held: Cells, given: Cells): Readonly<Record<string, CellChange>> {
  return Object.fromEntries(
    Object.entries(given).flatMap(([id, after]) =>
      after === undefined || after === held[id] ? [] : [[id, { before: held[id], after }]],
    ),
  );
}

function planTable(log: LogSnapshot, table: FileTable, rows: readonly Cells[]): ImportPlan {
  const { one } = tableWords[table];
  const key = keyColumn(table).id;
  const planned = rows.map((given): ImportPlan => {
    const name = String(given[key]);
    const row: AnyRow | undefined = shopRow(log, table, name);
    if (row === undefined) return { lines: [`New ${one}: ${name}`], changes: { rows: [{ table, row: given }] } };
    const cells = differing(row.cells, given);
    const lines = inputsOf(table).flatMap(({ id, label, type }) => {
      const cell = cells[id];
      return cell === undefined
        ? []
        : [`${one} ${name}, ${label}: ${spoken(cell.before, type)} → ${spoken(cell.after, type)}`];
    });
    return lines.length === 0
      ? { lines, changes: {} }
      : { lines, changes: { changes: [{ table, position: row.position, cells }] } };
  });
  return joined(planned);
}

function joined(plans: readonly ImportPlan[]): ImportPlan {
  return {
    lines: plans.flatMap(({ lines }) => lines),
    changes: {
      fields: Object.assign({}, ...plans.map(({ changes }) => changes.fields ?? {})) as Record<string, CellChange>,
      changes: plans.flatMap(({ changes }) => changes.changes ?? []),
      rows: plans.flatMap(({ changes }) => changes.rows ?? []),
    },
  };
}

export function importPlan(log: LogSnapshot, shop: Shop): ImportPlan {
  const fields = differing(log.fields, shop.limits);
  const limits = Object.entries(fields).map(
    ([id, { before, after }]) =>
      `${limitOf(id).label}: ${spoken(before, limitOf(id).type)} → ${spoken(after, limitOf(id).type)}`,
  );
  return joined([
    { lines: limits, changes: { fields } },
    ...fileTables.map((table) => planTable(log, table, shop.tables[table])),
  ]);
}
