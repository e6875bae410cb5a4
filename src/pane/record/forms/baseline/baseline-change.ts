import type { RowChange } from "../../../../excel/record/cell-changes.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";

/** The bath's row with another baseline; its name stands among the cells, so that a row which sorting moved is never taken for this one. */
export function baselineChange({ position, cells: held }: SnapshotRow<"baths">, cells: LogRow<"baths">): RowChange {
  const changes = Object.entries(cells).map(([id, after]) => [
    id,
    { before: held[id as keyof typeof cells], after: after === "" ? undefined : after },
  ]);
  return {
    table: "baths",
    position,
    cells: { bath: { before: held.bath, after: held.bath }, ...Object.fromEntries(changes) },
  };
}
