import type { FilledFields } from "../../advice/filled-fields.ts";
import type { LogContext } from "../../advice/log-context.ts";
import type { NewRow } from "../../excel/record/append-ground.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { LogRow } from "../../joblog/model/definition.ts";
import { cellsOf } from "./cells-of.ts";
import { inputIds } from "./fields-of.ts";
import { nextIds } from "./next-id.ts";

/** Further rows under the next running numbers. A field that bears a column's name fills it; `own` says what each row holds beside or instead. */
export function newRows(
  table: TableId,
  filled: FilledFields,
  { log }: LogContext,
  own: readonly LogRow[] = [{}],
): readonly NewRow[] {
  const [key = "", ...typed] = inputIds(table);
  const common = cellsOf(filled, typed);
  const ids = nextIds(log, table, own.length);
  return own.map((cells, index) => ({ table, row: { [key]: ids[index], ...common, ...cells } }));
}
