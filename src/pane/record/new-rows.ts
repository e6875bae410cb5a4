import type { FilledFields } from "../../advice/filled-fields.ts";
import type { LogContext } from "../../advice/log-context.ts";
import type { LogRow } from "../../joblog/model/definition.ts";
import { typedCells } from "./cells-of.ts";
import { nextIds, type NumberedTable } from "./next-id.ts";

interface AddedRow<Table extends NumberedTable> {
  readonly table: Table;
  readonly row: LogRow<Table>;
}

/** Further rows under the next running numbers. A field that bears a column's name fills it; `own` says what each row holds beside or instead. */
export function newRows<Table extends NumberedTable>(
  table: Table,
  filled: FilledFields<never>,
  { log }: LogContext,
  own: readonly LogRow<Table>[],
): readonly AddedRow<Table>[] {
  const common = typedCells(table, filled);
  const ids = nextIds(log, table, own.length);
  // The columns were taken from this table's description.
  return own.map((cells, index) => ({ table, row: { ...common, id: ids[index], ...cells } }));
}

/** One further row, likewise. */
export function newRow<Table extends NumberedTable>(
  table: Table,
  filled: FilledFields<never>,
  context: LogContext,
  own: LogRow<Table> = {},
): AddedRow<Table> {
  const [added] = newRows(table, filled, context, [own]);
  if (added === undefined) throw new RangeError(`No row of ${table} was made.`);
  return added;
}
