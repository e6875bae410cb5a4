/** What was read from a workbook's log in one go, by the ids of the log's description. */
import type { ColumnId, FieldId } from "../formula/log-names.ts";
import type { TableId } from "../formula/log-types.ts";
import type { Cells, RowValue } from "./definition.ts";

/** One table row; a blank cell is absent. `position` counts the table's data rows from 0. */
export interface SnapshotRow<Table extends TableId> {
  readonly position: number;
  readonly cells: { readonly [Id in ColumnId<Table>]?: RowValue | undefined };
}

/** A row of whichever table, for what goes by the log's description and reads every column alike. */
export interface AnyRow {
  readonly position: number;
  readonly cells: Cells;
}

/** Rows that are wholly blank in their input columns are left out. */
export interface LogSnapshot {
  readonly fields: { readonly [Id in FieldId]?: RowValue | undefined };
  readonly rows: { readonly [Table in TableId]: readonly SnapshotRow<Table>[] };
}

/** Excel shows a failed or unfinished formula as text such as #NAME? or #BUSY!. */
export function isCellError(value: RowValue | undefined): boolean {
  return typeof value === "string" && /^#[A-Z/0-9]+[!?]?$/.test(value);
}

/** What Excel shows in a cell until a function has answered, or for one that it does not know. */
const unfinished: readonly unknown[] = ["#BUSY!", "#GETTING_DATA", "#NAME?", "#CONNECT!"];

export const isUnfinished = (value: unknown): boolean => unfinished.includes(value);
