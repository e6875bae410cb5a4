import type { FilledFields } from "../../advice/filled-fields.ts";
import type { LogRow } from "../../joblog/model/definition.ts";

/** The cells of a row whose fields bear the names of its columns; a blank field leaves its cell blank. */
export function cellsOf(filled: FilledFields, columns: readonly string[]): LogRow {
  return Object.fromEntries(columns.map((id) => [id, filled.number(id) ?? filled.text(id)]));
}
