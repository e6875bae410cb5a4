import type { TablePlan } from "../../joblog/model/plan.ts";
import { LogProblem } from "../office-problems.ts";

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
    what: `This workbook has a table of its own named ${foreign.name} (capitals do not count), and the log's formulas need that name. Nothing was changed.`,
    remedy:
      "Click in your table, give it another name (Table Design, Table Name), then build again. Or build the log in a new workbook.",
  });
}

/** Throws a LogProblem where a workbook without a log has defined names that the log's formulas need. */
export function refuseForeignNames(names: readonly string[]): void {
  if (names.length === 0) return;
  const several = names.length > 1;
  throw new LogProblem({
    what: `This workbook has ${several ? "defined names" : "a defined name"} of its own, ${names.join(", ")}, and the log's formulas need ${several ? "those names" : "that name"}. Nothing was changed.`,
    remedy: `Give ${several ? "them other names" : "it another name"} (Formulas, Name Manager), then build again. Or build the log in a new workbook.`,
  });
}

/**
 * Throws a LogProblem where a table that the log had is there under another name, or its sheet is there
 * without it: a second one would part the log's figures from the rows.
 */
export function refuseRenamedTables(
  lost: readonly {
    readonly plan: TablePlan;
    readonly sheet: string;
    /** A sheet of that name is there. */ readonly taken: boolean;
  }[],
  strangers: readonly { readonly name: string; readonly sheet: string; readonly headers: readonly string[] }[],
): void {
  for (const { plan, sheet, taken } of lost) {
    const likely = strangers.find(({ headers }) => !isForeign(plan, headers, false));
    if (likely !== undefined) {
      throw new LogProblem({
        what: `The log's table ${plan.name} is missing, and the table ${likely.name} on sheet ${likely.sheet} has its headings. Nothing was changed.`,
        remedy: `If it was renamed, click in it and give it the name ${plan.name} again (Table Design, Table Name).`,
      });
    }
    if (taken) {
      throw new LogProblem({
        what: `The log's table ${plan.name} is missing, and there is a sheet ${sheet} that may hold its rows. Nothing was changed.`,
        remedy: `Undo what removed the table (Ctrl+Z). Or select its rows with the headings, make them a table (Insert, Table) and name it ${plan.name}. Is the sheet another one? Rename it.`,
      });
    }
  }
}
