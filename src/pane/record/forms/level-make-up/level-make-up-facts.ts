import { findRow, type RowFacts, rowFacts } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { tankOf } from "../../../../advice/tank-limits.ts";

/** What the rise of the level holds; undefined without both levels or the tank's size. */
export function riseOf(filled: FilledFields, context: LogContext): number | undefined {
  const perDepth = tankOf(context, filled.text("bath"))?.number("volumePerDepth");
  const [before, after] = [filled.number("levelBefore"), filled.number("levelAfter")];
  return perDepth === undefined || before === undefined || after === undefined
    ? undefined
    : (after - before) * perDepth;
}

/** The row of a water, of a concentrate. */
export function keyed(
  context: LogContext,
  table: "waters" | "concentrates",
  column: "water" | "concentrate",
  key: string | undefined,
): RowFacts | undefined {
  const row = key === undefined ? undefined : findRow(context.log, table, column, key);
  return row === undefined ? undefined : rowFacts(row);
}
