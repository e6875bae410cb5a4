import type { CellChange, RowChange } from "../../../../excel/record/cell-changes.ts";
import type { Cells, LogRow } from "../../../../joblog/model/definition.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";

/** The bath's row with another baseline; its name stands among the cells, so that a row which sorting moved is never taken for this one. */
export function baselineChange({ position, cells: held }: SnapshotRow<"baths">, cells: LogRow<"baths">): RowChange {
  const before: Cells = held;
  const changes = Object.entries(cells).map(([id, after]): readonly [string, CellChange] => [
    id,
    { before: before[id], after: after === "" ? undefined : after },
  ]);
  const changed: Readonly<Record<string, CellChange>> = Object.fromEntries(changes);
  return { table: "baths", position, cells: { bath: { before: held.bath, after: held.bath }, ...changed } };
}
