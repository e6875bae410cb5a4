import { minus } from "./arithmetic.ts";
import { when } from "./choices.ts";
import { isBlank } from "./conditions.ts";
import { apply, type Column, type Expression, type Value } from "./expression.ts";
import type { ColumnId, Columns, Row } from "./log-names.ts";
import type { TableId } from "./log-types.ts";

/** Where a value stands in a column, the first data row being 1; #N/A where it does not. */
export const matchIn = (key: Value, column: Column): Expression => apply("MATCH", key, column, 0);

/** The position of a key in a table's key column, blank where it stands nowhere. */
export function positionOf(key: Expression, column: Column): Expression {
  const match = matchIn(key, column);
  return when(isBlank(key), "").when(apply("ISNA", match), "").otherwise(match);
}

/** The cell of a column at a position that is known to exist. */
export const cellAt = <Word extends string>(column: Column<TableId, Word>, position: Value): Expression<Word> =>
  apply("INDEX", column, position) as Expression<Word>;

/** The row of a table at a position that is known to exist. */
export function rowAt<Table extends TableId>(columns: Columns<Table>, position: Value): Row<Table> {
  const ids = Object.keys(columns) as ColumnId<Table>[];
  return Object.fromEntries(ids.map((id) => [id, cellAt(columns[id], position)])) as Row<Table>;
}

/** As `cellAt`, blank where the position or the cell is blank. */
export function cellAtOrBlank(column: Column, position: Expression): Expression {
  const cell = cellAt(column, position);
  return when(isBlank(position), "").when(isBlank(cell), "").otherwise(cell);
}

/** The place of one value in what a function spills side by side. */
export const placeIn = (spilled: Expression, place: number): Expression => apply("INDEX", spilled, 1, place);

const headingOf = ({ table, column }: Column): Expression => ({ kind: "heading", table, column });

/** Which data row of its table the cell stands in, the first being 1. */
export const lineOf = (cell: Expression, column: Column): Expression =>
  minus(apply("ROW", cell), apply("ROW", headingOf(column)));

/** Which data row of the column's table the formula stands in. */
export const thisLine = (column: Column): Expression => minus(apply("ROW"), apply("ROW", headingOf(column)));

/** This row's cells from one column to another, as one range. Throws a RangeError for what is no cell of this row. */
export function cellsFrom(first: Expression, last: Expression): Expression {
  if (first.kind !== "here" || last.kind !== "here") throw new RangeError("Only cells of one row make a range.");
  return { kind: "span", first: first.column, last: last.column };
}
