import type { TablePlan } from "../joblog/plan.ts";
import { LogProblem } from "./office-problems.ts";

/** A header without its unit, which follows the log's unit system. */
const label = (header: string): string => header.split(", ")[0] ?? header;

/** A shop may rename a column or two; a table that shares fewer than half of them is one of its own. */
function isForeign(plan: TablePlan, headers: readonly unknown[]): boolean {
  const present = new Set(headers.map((header) => label(String(header))));
  const known = plan.columns.filter(({ header }) => present.has(label(header))).length;
  return known * 2 < plan.columns.length;
}

/** Throws a LogProblem where a table of the shop's own bears a name that the log's formulas need. */
export async function refuseForeignTables(context: Excel.RequestContext, plans: readonly TablePlan[], tables: readonly Excel.Table[]): Promise<void> {
  const headers = new Map(tables.map((table) => [table.name, table.getHeaderRowRange().load("values")]));
  if (headers.size === 0) return;
  await context.sync();
  const foreign = plans.find((plan) => {
    const row = headers.get(plan.name)?.values[0];
    return row !== undefined && isForeign(plan, row);
  });
  if (foreign === undefined) return;
  throw new LogProblem({
    what: `This workbook has a table of its own named ${foreign.name}, and the log's formulas need that name. Nothing was changed.`,
    remedy: "Click in your table, give it another name (Table Design, Table Name), then build again. Or build the log in a new workbook.",
  });
}
