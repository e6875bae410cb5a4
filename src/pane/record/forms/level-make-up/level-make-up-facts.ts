import { tankOf } from "../../../../advice/amounts/tank-limits.ts";
import { findRow, type RowFacts, rowFacts } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

/** Keys of the form's fields. */
export type MakeUpKey = ColumnId<"additions"> | "concentrateAmount";

/** What the rise of the level holds; undefined without both levels or the tank's size. */
export function riseOf(filled: FilledFields<MakeUpKey>, context: LogContext): number | undefined {
  const perDepth = tankOf(context, filled.text("bath"))?.number("volumePerDepth");
  const [before, after] = [filled.number("levelBefore"), filled.number("levelAfter")];
  return perDepth === undefined || before === undefined || after === undefined
    ? undefined
    : (after - before) * perDepth;
}

/** The row of a water, of a concentrate. */
export function keyed<Table extends "waters" | "concentrates">(
  context: LogContext,
  table: Table,
  column: ColumnId<Table>,
  key: string | undefined,
): RowFacts<Table> | undefined {
  const row = key === undefined ? undefined : findRow(context.log, table, column, key);
  return row === undefined ? undefined : rowFacts(row);
}
