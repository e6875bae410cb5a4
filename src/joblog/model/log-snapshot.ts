/** What was read from a workbook's log in one go, by the ids of the log's description. */
import type { TableId } from "../formula/log-types.ts";
import type { RowValue } from "./definition.ts";

/** One table row; a blank cell is absent. `position` counts the table's data rows from 0. */
export interface SnapshotRow {
  readonly position: number;
  readonly cells: Readonly<Record<string, RowValue | undefined>>;
}

/** Rows that are wholly blank in their input columns are left out. */
export interface LogSnapshot {
  readonly fields: Readonly<Record<string, RowValue | undefined>>;
  readonly rows: Readonly<Record<TableId, readonly SnapshotRow[]>>;
}

/** Excel shows a failed or unfinished formula as text such as #NAME? or #BUSY!. */
export function isCellError(value: RowValue | undefined): boolean {
  return typeof value === "string" && /^#[A-Z/0-9]+[!?]?$/.test(value);
}
