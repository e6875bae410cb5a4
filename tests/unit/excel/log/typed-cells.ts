import type { CellChange, RowChange } from "../../../../src/excel/record/cell-changes.ts";
import type { LogEdit } from "../../../../src/excel/record/log-edit.ts";
import type { TypedCells } from "../../../../src/joblog/layout/typed-cells.ts";
import type { NewRow } from "../../../../src/joblog/model/definition.ts";
import type { Cells } from "../../../../src/joblog/model/definition.ts";

function changesIn(from: Cells, to: Cells): Readonly<Record<string, CellChange>> {
  return Object.fromEntries(
    Object.keys(to).flatMap((id) => (from[id] === to[id] ? [] : [[id, { before: from[id], after: to[id] }] as const])),
  );
}

/** What is to be typed to come from one log to another: undefined where a row would have to go or a table to move. */
export function changesBetween(from: TypedCells, to: TypedCells): (LogEdit & { readonly cells: number }) | undefined {
  if (from.places.join() !== to.places.join()) return undefined;
  const fields = changesIn(Object.fromEntries(from.fields), Object.fromEntries(to.fields));
  const rows: RowChange[] = [];
  const added: NewRow[] = [];
  for (const [table, wanted] of to.rows) {
    const had = from.rows.get(table) ?? [];
    if (had.length > wanted.length) return undefined;
    for (const [position, row] of wanted.entries()) {
      const before = had[position];
      // Both logs are laid out from the description that gives a table its columns.
      if (before === undefined) added.push({ table, row } as NewRow);
      else rows.push({ table, position, cells: changesIn(before, row) } as RowChange);
    }
  }
  const changed = rows.filter(({ cells }) => Object.keys(cells).length > 0);
  const written = [fields, ...changed.map(({ cells }) => cells), ...added.map(({ row }) => row)];
  return {
    fields,
    changes: changed,
    rows: added,
    cells: written.reduce((sum, one) => sum + Object.keys(one).length, 0),
  };
}
