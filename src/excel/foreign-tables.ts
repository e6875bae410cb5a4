import type { TablePlan } from "../joblog/plan.ts";
import { LogProblem } from "./office-problems.ts";

/** A header without its unit, which follows the log's unit system. */
const label = (header: string): string => header.split(", ")[0] ?? header;

/**
 * A shop may rename a column or two; a table that shares fewer than half of them is one of its own.
 * In a workbook with the log's named cells a table may also be one of an earlier, narrower log.
 */
function isForeign(plan: TablePlan, headers: readonly string[], hasLogCells: boolean): boolean {
  const present = new Set(headers.map(label));
  const known = plan.columns.filter(({ header }) => present.has(label(header))).length;
  return known * 2 < (hasLogCells ? Math.min(plan.columns.length, headers.length) : plan.columns.length);
}

/** Throws a LogProblem where a table of the shop's own bears a name that the log's formulas need. */
export function refuseForeignTables(
  plans: readonly TablePlan[],
  tables: readonly { readonly name: string; readonly headers: readonly string[] }[],
  hasLogCells: boolean,
): void {
  const foreign = plans.find((plan) => {
    const table = tables.find(({ name }) => name === plan.name);
    return table !== undefined && isForeign(plan, table.headers, hasLogCells);
  });
  if (foreign === undefined) return;
  throw new LogProblem({
    what: `This workbook has a table of its own named ${foreign.name}, and the log's formulas need that name. Nothing was changed.`,
    remedy: "Click in your table, give it another name (Table Design, Table Name), then build again. Or build the log in a new workbook.",
  });
}
