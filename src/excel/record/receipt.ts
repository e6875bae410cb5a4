import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { AnyChange } from "./cell-changes.ts";

/** A row that was written: where, with what, and whether the table grew for it. */
export interface WrittenRow {
  readonly table: TableId;
  /** Counts the table's data rows from 0. */
  readonly position: number;
  /** The typed cells as they were handed over; computed cells are not among them. */
  readonly cells: Cells;
  readonly grown: boolean;
}

/** Blank cells of an earlier row that were filled in. */
export interface FilledCells {
  readonly table: TableId;
  readonly position: number;
  readonly key: string;
  readonly cells: Cells;
}

/** What one entry wrote, so that it can be taken back. Plain data. */
export interface Receipt {
  readonly rows: readonly WrittenRow[];
  readonly fills: readonly FilledCells[];
  /** Cells of earlier rows that held something else before. */
  readonly changes: readonly AnyChange[];
}

/** What several writes wrote, as if one: it is taken back whole or not at all. */
export function joinReceipts(receipts: readonly Receipt[]): Receipt {
  return {
    rows: receipts.flatMap(({ rows }) => rows),
    fills: receipts.flatMap(({ fills }) => fills),
    changes: receipts.flatMap(({ changes }) => changes),
  };
}
