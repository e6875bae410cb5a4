import { cellValue } from "../cell-text.ts";
import { LogProblem } from "../office-problems.ts";
import { RowMoved } from "./row-places.ts";

/** Cells that a plan writes. `range` finds them anew, from the table as it is when the batch runs. */
export interface CellWrite {
  readonly range: () => Excel.Range;
  readonly write: (range: Excel.Range) => void;
}

/** A table that becomes longer, or shorter by its last rows. */
export interface SizeChange {
  readonly table: Excel.Table;
  readonly extra: number;
  /** Data rows that it has then. */
  readonly wanted: number;
}

export interface WritePlan {
  /** The same for two plans only where both put the same into the same cells. */
  readonly signature: string;
  readonly sizes: readonly SizeChange[];
  readonly cells: readonly CellWrite[];
}

/** Asks for what planning needs; what it returns makes the plan once that has come. Throws a LogProblem or RowMoved. */
export type Planner<Plan extends WritePlan> = (context: Excel.RequestContext) => () => Plan;

/** Takes out what a batch has left that failed before its end. */
export type Recovery<Plan> = (context: Excel.RequestContext, plan: Plan) => Promise<void>;

/** Other people's writes come seconds apart; whoever is outrun this often is told. */
const mostAttempts = 4;

function outrun(): LogProblem {
  return new LogProblem({
    what: "Somebody else was faster: rows of the log changed each time that this was written, so nothing of it was kept.",
    remedy: "It stays here. Try again in a moment.",
  });
}

function lastRows(table: Excel.Table, count: number): Excel.Range {
  return table
    .getDataBodyRange()
    .getLastRow()
    .getOffsetRange(1 - count, 0)
    .getResizedRange(count - 1, 0);
}

/** The rows that a table takes in or lets go. */
function edge({ table, extra }: SizeChange): Excel.Range {
  return extra > 0 ? table.getDataBodyRange().getRowsBelow(extra) : lastRows(table, -extra);
}

function changeSize(size: SizeChange): void {
  const { table, extra } = size;
  table.resize(table.getRange().getResizedRange(extra, 0));
  if (extra < 0) table.getDataBodyRange().getRowsBelow(-extra).clear();
  else {
    const grown = lastRows(table, extra);
    grown.copyFrom(grown.getRow(0).getOffsetRange(-1, 0), "Formats");
  }
}

/** What a cell held, so that writing it gives the same again: of typed text Excel would read a number or a formula. */
function formerContent({ formulas, values }: Excel.Range): (string | number | boolean)[][] {
  const shown = values as (string | number | boolean)[][];
  return (formulas as (string | number | boolean)[][]).map((line, row) =>
    line.map((formula, column) => (formula === shown[row]?.[column] ? cellValue(formula) : formula)),
  );
}

function asks(range: Excel.Range): Excel.Range {
  return range.load("formulas,values");
}

/** Whether the plan made from what the batch found at its beginning is the one that the batch carried out. */
function wasRight<Plan extends WritePlan>(found: () => Plan, plan: Plan): boolean {
  try {
    return found().signature === plan.signature;
  } catch (error) {
    if (error instanceof LogProblem || error instanceof RowMoved) return false;
    throw error;
  }
}

/** After a batch that failed: its leftovers go, and where something stands in the way, that is said instead of Excel's words. */
async function recoverFrom<Plan extends WritePlan>(
  plan: Plan,
  planner: Planner<Plan>,
  recover: Recovery<Plan>,
): Promise<void> {
  await Excel.run((context) => recover(context, plan));
  await Excel.run(async (context) => {
    const again = planner(context);
    await context.sync();
    again();
  });
}

/** The plan as the workbook is now; undefined where its rows have to be looked for once more. */
async function planNow<Plan extends WritePlan>(
  context: Excel.RequestContext,
  planner: Planner<Plan>,
): Promise<Plan | undefined> {
  const found = planner(context);
  await context.sync();
  try {
    return found();
  } catch (error) {
    if (error instanceof RowMoved) return undefined;
    throw error;
  }
}

/** Excel does not grow a table as told in every case; what it left out is asked for once more. */
async function growForCertain(
  context: Excel.RequestContext,
  sizes: readonly SizeChange[],
  counts: readonly OfficeExtension.ClientResult<number>[],
): Promise<void> {
  const short = sizes.filter(({ wanted }, index) => (counts[index]?.value ?? wanted) < wanted);
  for (const { table, wanted } of short) table.resize(table.getHeaderRowRange().getResizedRange(wanted, 0));
  if (short.length > 0) await context.sync();
}

/** Writes, and looks in the same batch at what it wrote over; what hit something else is put back with the next trip. */
async function hits<Plan extends WritePlan>(
  context: Excel.RequestContext,
  plan: Plan,
  planner: Planner<Plan>,
  recover: Recovery<Plan>,
): Promise<boolean> {
  const found = planner(context);
  const edges = plan.sizes.map((size) => ({ size, was: asks(edge(size)) }));
  const formers = plan.cells.map(({ range }) => ({ range: range(), was: asks(range()) }));
  for (const size of plan.sizes) changeSize(size);
  for (const { range, write } of plan.cells) write(range());
  const counts = plan.sizes.map(({ table }) => table.rows.getCount());
  try {
    await context.sync();
  } catch (error) {
    await recoverFrom(plan, planner, recover).catch((reason: unknown) => {
      if (reason instanceof LogProblem) throw reason;
    });
    throw error;
  }
  if (wasRight(found, plan)) {
    await growForCertain(context, plan.sizes, counts);
    return true;
  }
  for (const { size } of edges) changeSize({ ...size, extra: -size.extra });
  for (const { size, was } of edges) edge(size).formulas = formerContent(was);
  for (const { range, was } of formers) range.formulas = formerContent(was);
  return false;
}

/**
 * Carries a plan out so that it hits the rows it was made for, though other people write as well. Excel locks
 * nothing between reading and writing; so the batch that writes first reads again what the plan rests on, and what the
 * cells hold. Where that is no longer what it was, everything is put back and planned anew. Two trips as a rule.
 */
export async function writeSurely<Plan extends WritePlan>(
  context: Excel.RequestContext,
  planner: Planner<Plan>,
  recover: Recovery<Plan>,
): Promise<Plan> {
  for (let attempt = 0; attempt < mostAttempts; attempt += 1) {
    const plan = await planNow(context, planner);
    if (plan !== undefined && (await hits(context, plan, planner, recover))) return plan;
  }
  await context.sync();
  throw outrun();
}
