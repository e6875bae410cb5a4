/** What rows will say once they are recorded, by the log's own formulas. */
import { CellError, type Scalar } from "../joblog/evaluate/cell-value.ts";
import { EvaluatedLog, type Fresh } from "../joblog/evaluate/evaluated-log.ts";
import type { ColumnId } from "../joblog/formula/log-names.ts";
import type { TableId } from "../joblog/formula/log-types.ts";
import { jobLog } from "../joblog/job-log.ts";
import type { LogRow, NewRow } from "../joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../joblog/model/log-snapshot.ts";
import type { Answer } from "./ask.ts";
import type { RowFacts, TextOf } from "./bath-facts.ts";

/** A row as it will stand, as figures and words: what is blank, an error or of the other type is undefined. */
export interface DraftedRow<Table extends TableId> extends RowFacts<Table> {
  /** The sentence of the function that refused. */
  readonly refusal: (column: ColumnId<Table>) => string | undefined;
  /** The figure, or why there is none; undefined where the cell is blank or holds words. */
  readonly answer: (column: ColumnId<Table>) => Answer<number> | undefined;
}

function drafted<Table extends TableId>(cell: (column: ColumnId<Table>) => Scalar | undefined): DraftedRow<Table> {
  const number = (column: ColumnId<Table>): number | undefined => {
    const value = cell(column);
    return typeof value === "number" ? value : undefined;
  };
  const refusal = (column: ColumnId<Table>): string | undefined => {
    const value = cell(column);
    return value instanceof CellError ? value.why : undefined;
  };
  return {
    number,
    text: <Id extends ColumnId<Table>>(column: Id) => {
      const value = cell(column);
      return value === undefined || value === null || value === "" || value instanceof CellError
        ? undefined
        : (String(value) as TextOf<Table, Id>);
    },
    refusal,
    answer: (column) => {
      const [value, why] = [number(column), refusal(column)];
      if (value !== undefined) return { known: true, value };
      return why === undefined ? undefined : { known: false, why };
    },
  };
}

/** A log with rows that it does not hold yet. */
export interface DraftedLog {
  /** One of the rows that were added to a table, the first being 0. */
  readonly added: <Table extends TableId>(table: Table, index?: number) => DraftedRow<Table>;
  /** A row that stands in the log already. */
  readonly standing: <Table extends TableId>(table: Table, row: SnapshotRow<Table>) => DraftedRow<Table>;
}

/**
 * A log once some rows are added. Rows that stand in it count as the sheet shows them now, but for those
 * that `fresh` picks: what it reckons from the new rows is worked out anew.
 */
export function draftedLog(log: LogSnapshot, rows: readonly NewRow[], fresh?: Fresh): DraftedLog {
  const worked = new EvaluatedLog(
    jobLog,
    log,
    rows.map(({ table, row }) => ({ table, cells: row })),
    fresh,
  );
  const at = <Table extends TableId>(table: Table, line: number): DraftedRow<Table> =>
    drafted((column) => worked.cell(table, column, line));
  return {
    added: (table, index = 0) => {
      const count = rows.filter((row) => row.table === table).length;
      return at(table, worked.linesIn(table) - count + index);
    },
    standing: (table, { position }) => at(table, position),
  };
}

/** What one row will say. */
export function draftedRow<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  row: LogRow<Table>,
): DraftedRow<Table> {
  return draftedLog(log, [{ table, row } as NewRow]).added(table);
}

/** A log in which further cells of one of its rows are filled in. */
export function completed<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  { position, cells }: SnapshotRow<Table>,
  further: LogRow<Table>,
): { readonly log: LogSnapshot; readonly row: SnapshotRow<Table> } {
  const row: SnapshotRow<Table> = { position, cells: { ...cells, ...further } };
  const rows = log.rows[table].map((one) => (one.position === position ? row : one));
  return { log: { ...log, rows: { ...log.rows, [table]: rows } }, row };
}

/** What a row of the log will say once further cells of it are filled in. */
export function completedRow<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  row: SnapshotRow<Table>,
  further: LogRow<Table>,
): DraftedRow<Table> {
  const after = completed(log, table, row, further);
  return draftedLog(after.log, [], (of, cells) => of === table && cells === after.row.cells).standing(table, after.row);
}
