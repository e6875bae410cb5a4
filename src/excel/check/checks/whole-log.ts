/** The log itself: built, upgraded, written to, read, taken back and removed again. */
import { jobLog } from "../../../joblog/job-log.ts";
import { layOut } from "../../../joblog/layout/lay-out.ts";
import type { NewRow, RowValue } from "../../../joblog/model/definition.ts";
import { isCellError, type LogSnapshot } from "../../../joblog/model/log-snapshot.ts";
import type { WorkbookPlan } from "../../../joblog/model/plan.ts";
import { buildLog, editLog, readLog, takeBack, upgradeLog } from "../../log-workbook.ts";
import { LogProblem } from "../../office-problems.ts";
import { type ExcelCheck, finding, NotTried } from "../excel-check.ts";

/** More than a new log has lines for, so that the table has to grow. */
const readings: readonly NewRow[] = Array.from({ length: 40 }, (_, index) => ({
  table: "readings",
  row: {
    id: `R${String(index + 1).padStart(3, "0")}`,
    bath: "B-T1-0301",
    when: 46_449 + index / 24,
    purpose: "check",
    ph: 10.8,
    temperature: 77,
  },
}));

/** A log, or a name of the person's own that the log's would meet: both would be lost with the check's log. */
async function refuseWhereLogIs({ names: planned }: WorkbookPlan): Promise<void> {
  const taken = await Excel.run(async (context) => {
    const names = context.workbook.names.load("items/name");
    await context.sync();
    return new Set(names.items.map(({ name }) => name.toLowerCase()));
  });
  const met = planned.find(({ name }) => taken.has(name.toLowerCase()));
  if (met !== undefined) throw new NotTried(`This workbook has the name ${met.name}. Run the check in a new workbook.`);
  const log = await readLog().catch((error: unknown) => {
    throw error instanceof LogProblem ? new NotTried(error.message) : error;
  });
  if (log !== undefined)
    throw new NotTried("This workbook holds a log, which the check leaves alone. Run it in a new workbook.");
}

async function removeLog({ names }: WorkbookPlan, sheets: readonly string[]): Promise<void> {
  await Excel.run(async (context) => {
    for (const { name } of names) context.workbook.names.getItemOrNullObject(name).delete();
    await context.sync();
    for (const name of sheets) context.workbook.worksheets.getItem(name).delete();
    await context.sync();
  });
}

class Stopwatch {
  private readonly notes: string[] = [];

  async time<Result>(words: string, work: () => Promise<Result>): Promise<Result> {
    const start = performance.now();
    const result = await work();
    this.notes.push(`${words} ${String(Math.round(performance.now() - start))} ms`);
    return result;
  }

  get told(): string {
    return this.notes.join(", ");
  }
}

/** A chart's helper column holds #N/A where nothing is to be drawn. */
const isFault = (value: RowValue | undefined): boolean => isCellError(value) && value !== "#N/A";

const errorsIn = (log: LogSnapshot | undefined): readonly string[] =>
  (log?.rows.readings ?? []).flatMap(({ cells }) =>
    Object.entries(cells).flatMap(([column, value]) => (isFault(value) ? [`${column} ${String(value)}`] : [])),
  );

/** What of a log that was just built is otherwise than it should be. */
async function tryLog(
  plan: WorkbookPlan,
  watch: Stopwatch,
  pause: (milliseconds: number) => Promise<void>,
): Promise<readonly string[]> {
  const upgraded = await watch.time("looked through for an upgrade", () => upgradeLog(plan));
  const receipt = await watch.time(`${String(readings.length)} readings recorded`, () => editLog({ rows: readings }));
  await pause(3000);
  const log = await watch.time("read", () => readLog());
  await watch.time("taken back", () => takeBack(receipt));
  const after = await readLog();
  const errors = new Set(errorsIn(log));
  const count = log?.rows.readings.length ?? 0;
  const grown = receipt.rows.some((row) => row.grown);
  return [
    ...(upgraded.rewritten === 0
      ? []
      : [`${String(upgraded.rewritten)} formulas are read back otherwise than written`]),
    ...(grown ? [] : ["the table did not grow"]),
    ...(count === readings.length ? [] : [`${String(count)} readings are read back`]),
    ...(errors.size === 0 ? [] : [`cells show ${[...errors].slice(0, 5).join(", ")}`]),
    ...(after?.rows.readings.length === 0 ? [] : ["readings are left after taking back"]),
  ];
}

export const wholeLogChecks: readonly ExcelCheck[] = [
  {
    id: "whole-log",
    title: "A whole log",
    asks: "A log is built, looked through for an upgrade, given 40 readings, read 3 s later, rid of them, and removed; each with its time.",
    expected:
      "No formula is read back otherwise than written, the table grows, no reading's cell shows an error but the #N/A of charts, none is left",
    patience: 240_000,
    run: async ({ pause }) => {
      const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });
      await refuseWhereLogIs(plan);
      const startup = await Office.addin.getStartupBehavior();
      const watch = new Stopwatch();
      const { added } = await watch.time("built in", () => buildLog(plan));
      try {
        const faults = await tryLog(plan, watch, pause);
        return finding(faults.length === 0, [...faults, watch.told].join("; "));
      } finally {
        await removeLog(plan, added);
        await Office.addin.setStartupBehavior(startup);
      }
    },
  },
];
