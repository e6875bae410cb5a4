import type { ColumnId } from "../joblog/formula/log-names.ts";
import type { LogTables, TableId } from "../joblog/formula/log-types.ts";
import type { RowValue } from "../joblog/model/definition.ts";
import { isCellError, type LogSnapshot, type SnapshotRow } from "../joblog/model/log-snapshot.ts";
import { isSameText } from "../joblog/model/same-text.ts";

/** What a column holds as text: its few words, where the log names them. */
export type TextOf<Table extends TableId, Id extends ColumnId<Table>> = LogTables[Table][Id] extends string
  ? LogTables[Table][Id]
  : string;

/** A row as figures and words: what is blank or of the other type is undefined. */
export interface RowFacts<Table extends TableId> {
  readonly number: (column: ColumnId<Table>) => number | undefined;
  readonly text: <Id extends ColumnId<Table>>(column: Id) => TextOf<Table, Id> | undefined;
}

export function rowFacts<Table extends TableId>({ cells }: SnapshotRow<Table>): RowFacts<Table> {
  return {
    number: (column) => {
      const value = cells[column];
      return typeof value === "number" ? value : undefined;
    },
    text: <Id extends ColumnId<Table>>(column: Id) => {
      const value = cells[column];
      // A cell can hold any text; the words are named so that it is compared with none that the column never holds.
      return value === undefined || isCellError(value) ? undefined : (String(value) as TextOf<Table, Id>);
    },
  };
}

function sameKey(value: RowValue | undefined, key: string): boolean {
  return value !== undefined && isSameText(String(value), key);
}

/** The row of a table whose column holds that key. */
export function findRow<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  column: ColumnId<Table>,
  key: string,
): SnapshotRow<Table> | undefined {
  return log.rows[table].find(({ cells }) => sameKey(cells[column], key));
}

/** Tables whose rows are events of a bath. */
export type BathTable = "benchTests" | "readings" | "additions" | "loads" | "care" | "releases";

/** The rows of one bath, in the order of time and, at the same minute, of the sheet. */
export function rowsOfBath<Table extends BathTable>(
  log: LogSnapshot,
  table: Table,
  bath: string,
): readonly SnapshotRow<Table>[] {
  const time = ({ cells }: SnapshotRow<Table>): number => {
    const { when } = cells;
    return typeof when === "number" ? when : Number.NEGATIVE_INFINITY;
  };
  return log.rows[table].filter(({ cells }) => sameKey(cells.bath, bath)).sort((a, b) => time(a) - time(b));
}

/** The latest reading that counts on the sheet: not of a rinse, with a time and a pH above 0. */
export function lastReadingOf(log: LogSnapshot, bath: string): SnapshotRow<"readings"> | undefined {
  return rowsOfBath(log, "readings", bath)
    .filter((row) => {
      const { number, text } = rowFacts(row);
      return text("purpose") !== "rinse" && (number("ph") ?? 0) > 0 && number("when") !== undefined;
    })
    .at(-1);
}
