import type { TableId } from "../joblog/formula/log-types.ts";
import type { RowValue } from "../joblog/model/definition.ts";
import { isCellError, type LogSnapshot, type SnapshotRow } from "../joblog/model/log-snapshot.ts";

/** A row as figures and words: what is blank or of the other type is undefined. */
export interface RowFacts {
  readonly number: (column: string) => number | undefined;
  readonly text: (column: string) => string | undefined;
}

export function rowFacts(row: SnapshotRow): RowFacts {
  return {
    number: (column) => {
      const value = row.cells[column];
      return typeof value === "number" ? value : undefined;
    },
    text: (column) => {
      const value = row.cells[column];
      return value === undefined || isCellError(value) ? undefined : String(value);
    },
  };
}

function sameKey(value: RowValue | undefined, key: string): boolean {
  return value !== undefined && String(value) === key;
}

/** The row of a table whose column holds that key. */
export function findRow(log: LogSnapshot, table: TableId, column: string, key: string): SnapshotRow | undefined {
  return log.rows[table].find((row) => sameKey(row.cells[column], key));
}

/** The rows of one bath, in the order of time and, at the same minute, of the sheet. */
export function rowsOfBath(
  log: LogSnapshot,
  table: "benchTests" | "readings" | "additions" | "loads" | "care" | "releases",
  bath: string,
): readonly SnapshotRow[] {
  const time = (row: SnapshotRow): number => {
    const { when } = row.cells;
    return typeof when === "number" ? when : Number.NEGATIVE_INFINITY;
  };
  return log.rows[table].filter((row) => sameKey(row.cells["bath"], bath)).sort((a, b) => time(a) - time(b));
}

/** The latest reading of a bath that is not of a rinse and has a pH. */
export function lastReadingOf(log: LogSnapshot, bath: string): SnapshotRow | undefined {
  return rowsOfBath(log, "readings", bath)
    .filter((row) => row.cells["purpose"] !== "rinse" && typeof row.cells["ph"] === "number")
    .at(-1);
}
