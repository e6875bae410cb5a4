import type { FilledFields } from "../../advice/filled-fields.ts";
import type { RowValue } from "../../joblog/model/definition.ts";

/** The cells of a row whose fields bear the names of its columns; a blank field leaves its cell blank. */
export function cellsOf<Key extends string>(
  filled: FilledFields<Key>,
  columns: readonly Key[],
): { readonly [Id in Key]?: RowValue | undefined } {
  const cells: { [Id in Key]?: RowValue | undefined } = {};
  for (const id of columns) cells[id] = filled.number(id) ?? filled.text(id);
  return cells;
}
