import { HalfWritten, LogProblem, officeCode } from "../office-problems.ts";
import { changeSize, dressRows, growForCertain, type GrownTable, growTable } from "./grow-table.ts";
import { bodyOf, carryOut, copyFormulas, rangeOf, type SizeChange, type WritePlan } from "./planned-write.ts";
import { RowMoved } from "./row-places.ts";
import { formerContent, hitInstead, type Leftovers, leftoversOf, undoWrite } from "./undo-write.ts";

/** Asks for what planning needs; what it returns makes the plan once that has come. Throws a LogProblem or RowMoved. */
export type Planner<Plan extends WritePlan> = (context: Excel.RequestContext) => () => Plan;

/** Other people's writes come seconds apart; whoever is outrun this often is told. */
const mostAttempts = 4;

function outrun(): LogProblem {
  return new LogProblem({
    what: "Somebody else was faster: rows of the log changed each time that this was written, so nothing of it was kept.",
    remedy: "It stays here. Try again in a moment.",
  });
}

const sameRows = (): LogProblem =>
  new LogProblem({ what: "Another person is changing the same rows of the log.", remedy: "" });

const isSame = (one: WritePlan, { sizes, writes, copies }: WritePlan): boolean =>
  JSON.stringify([one.sizes, one.writes, one.copies]) === JSON.stringify([sizes, writes, copies]);

/** Whether the plan made from what the batch found at its beginning is the one that the batch carried out. */
function wasRight<Plan extends WritePlan>(found: () => Plan, plan: Plan): boolean {
  try {
    return isSame(found(), plan);
  } catch (error) {
    if (error instanceof LogProblem || error instanceof RowMoved) return false;
    throw error;
  }
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

const sheetsOf = ({ writes, sizes }: WritePlan): readonly string[] => [
  ...new Set([...writes, ...sizes].map(({ sheet }) => sheet)),
];

/** In a context of its own: one whose batch failed is spent. Throws HalfWritten where something stays. */
async function takeOut(plan: WritePlan, leftovers: Leftovers, cause: unknown): Promise<void> {
  const stuck = await Excel.run((context) => undoWrite(context, leftovers)).catch(() => sheetsOf(plan));
  if (stuck.length > 0) throw new HalfWritten(stuck, cause);
}

/** After a batch that broke off: its leftovers go, and where something stands in the way, that is said instead of Excel's words. */
async function recoverFrom<Plan extends WritePlan>(
  failure: unknown,
  plan: Plan,
  planner: Planner<Plan>,
): Promise<never> {
  await takeOut(plan, leftoversOf(plan.writes, plan.sizes), failure);
  await Excel.run(async (context) => {
    const again = planner(context);
    await context.sync();
    again();
  }).catch((reason: unknown) => {
    if (reason instanceof LogProblem) throw reason;
  });
  throw failure;
}

interface Sent {
  /** Whether it hit what it was made for; asked once Excel has answered. */
  readonly hit: () => boolean;
  /** What it did where it hit something else. */
  readonly misses: () => Leftovers;
  readonly grown: readonly GrownTable[];
  readonly counts: readonly OfficeExtension.ClientResult<number>[];
}

/** Queues the batch that looks again and writes. */
function queue<Plan extends WritePlan>(context: Excel.RequestContext, plan: Plan, planner: Planner<Plan>): Sent {
  const { workbook } = context;
  const { sizes, writes, copies } = plan;
  const found = planner(context);
  const count = ({ table }: SizeChange): OfficeExtension.ClientResult<number> =>
    workbook.tables.getItem(table).rows.getCount();
  const formers = writes.map((write) => ({ write, range: rangeOf(workbook, write).load("formulas,values") }));
  const edges = sizes.map((size) => ({
    size,
    count: count(size),
    rows: size.extra > 0 ? bodyOf(workbook, size.table).getRowsBelow(size.extra).load("formulas,values") : undefined,
  }));
  const grown = sizes.filter(({ extra }) => extra > 0).map((size) => growTable(workbook, size));
  for (const write of writes) carryOut(workbook, write);
  for (const copy of copies) copyFormulas(workbook, copy);
  for (const { table, extra } of sizes) if (extra < 0) changeSize(workbook, table, extra);
  const counts = sizes.map(count);
  return {
    hit: () => wasRight(found, plan),
    misses: () => ({
      writes: formers.map(({ write, range }) => hitInstead(write, range)),
      sizes: edges.map(({ size, count: before, rows }, index) => ({
        size: { ...size, rowCount: before.value, extra: (counts[index]?.value ?? before.value) - before.value },
        edge: rows === undefined ? [] : formerContent(rows),
      })),
    }),
    grown,
    counts,
  };
}

/** The entry is in the log whole, so rows that lack lists and looks are no reason to call it refused. */
async function dressIfPossible(context: Excel.RequestContext, grown: readonly GrownTable[]): Promise<void> {
  await dressRows(context, grown).catch((error: unknown) => {
    if (officeCode(error) === undefined) throw error;
  });
}

/** Rows that a table let go stand beneath it until it is certain that they were the right ones. */
async function clearBeneath(sizes: readonly SizeChange[]): Promise<void> {
  const cut = sizes.filter(({ extra }) => extra < 0);
  if (cut.length === 0) return;
  const clear = (): Promise<void> =>
    Excel.run(async (context) => {
      for (const { table, extra } of cut) bodyOf(context.workbook, table).getRowsBelow(-extra).clear();
      await context.sync();
    });
  await clear()
    .catch(clear)
    .catch((error: unknown) => {
      throw new LogProblem(
        {
          what: "It was taken out of the log, but what its row held still stands beneath the table.",
          remedy: `Delete it there by hand (${cut.map(({ sheet }) => `sheet ${sheet}`).join(", ")}).`,
        },
        error,
      );
    });
}

async function hits<Plan extends WritePlan>(
  context: Excel.RequestContext,
  plan: Plan,
  planner: Planner<Plan>,
): Promise<boolean> {
  const sent = queue(context, plan, planner);
  try {
    await context.sync();
    if (sent.hit()) await growForCertain(context, plan.sizes, sent.counts);
  } catch (error) {
    await recoverFrom(error, plan, planner);
  }
  if (!sent.hit()) {
    await takeOut(plan, sent.misses(), sameRows());
    return false;
  }
  await dressIfPossible(context, sent.grown);
  await clearBeneath(plan.sizes);
  return true;
}

/**
 * Carries a plan out so that it hits the rows it was made for, though other people write as well. Excel locks
 * nothing between reading and writing; so the batch that writes first reads again what the plan rests on, and what the
 * cells hold. Where that is no longer what it was, everything is put back and planned anew. Two trips as a rule, and
 * one more where a table lets rows go. A batch that breaks off is taken out again; where that fails, too, HalfWritten
 * is thrown.
 */
export async function writeSurely<Plan extends WritePlan>(
  context: Excel.RequestContext,
  planner: Planner<Plan>,
): Promise<Plan> {
  for (let attempt = 0; attempt < mostAttempts; attempt += 1) {
    const plan = await planNow(context, planner);
    if (plan !== undefined && (await hits(context, plan, planner))) return plan;
  }
  throw outrun();
}
