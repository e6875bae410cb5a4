import type { FilledFields } from "../../advice/filled-fields.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells, RowValue } from "../../joblog/model/definition.ts";
import { inputColumns } from "./fields-of.ts";

/** The cells of a row whose fields bear the names of its columns; a blank field leaves its cell blank. */
export function cellsOf<Key extends string>(
  filled: FilledFields<Key>,
  columns: readonly Key[],
): { readonly [Id in Key]?: RowValue | undefined } {
  const cells: { [Id in Key]?: RowValue | undefined } = {};
  for (const id of columns) cells[id] = filled.number(id) ?? filled.text(id);
  return cells;
}

/** All that a form has for the columns of a table that a person types into. */
export function typedCells(table: TableId, filled: FilledFields<never>): Cells {
  // A column without a field in the form reads as blank.
  return cellsOf(
    filled as FilledFields<string>,
    inputColumns(table).map(({ id }) => id),
  );
}
