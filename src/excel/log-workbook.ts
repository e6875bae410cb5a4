/** The open workbook as the store of the job log. Every failure is a LogProblem that a person can act on. */
import { type UnitSystem, unitSystems } from "../core/units/unit-system.ts";
import { jobLog } from "../joblog/job-log.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import type { WorkbookPlan } from "../joblog/model/plan.ts";
import { findField } from "../joblog/model/references.ts";
import type { Rewriting } from "./build/write-computed.ts";
import type { BuildReport } from "./build/write-plan.ts";
import { refuseDatesFrom1904 } from "./date-system.ts";
import type { LongWork } from "./long-work.ts";
import { startWithWorkbook } from "./office-host.ts";
import { LogProblem, officeCode, problemFrom } from "./office-problems.ts";
import { explainMissing, readTables } from "./read/read-log.ts";
import type { LogEdit } from "./record/log-edit.ts";
import type { Receipt } from "./record/receipt.ts";

async function inExcel<Result>(work: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> {
  try {
    return await Excel.run(work);
  } catch (error) {
    throw problemFrom(error);
  }
}

/**
 * What writes comes when a log is first built or mended, which is seldom. The log's cells need the add-in's functions
 * whenever the workbook is open, so the add-in starts with the workbook from now on.
 */
async function writeLog(plan: WorkbookPlan, rewriting: Rewriting, work: LongWork): Promise<BuildReport> {
  await refuseDatesFrom1904();
  const { writePlan } = await import(/* webpackChunkName: "log-builder" */ "./build/write-plan.ts");
  const report = await inExcel((context) => writePlan(context, plan, rewriting, work));
  await startWithWorkbook();
  return report;
}

/**
 * Builds the log in the open workbook, or adds what a log there lacks; rows that hold data are left
 * alone. Cancelled or failed, it leaves the workbook as it was.
 */
export function buildLog(plan: WorkbookPlan, work: LongWork = {}): Promise<BuildReport> {
  return writeLog(plan, "none", work);
}

/**
 * Brings a log of an earlier version to the plan's: new sheets, columns and named cells, formulas that
 * changed, the version last. Typed data stays. Cancelled or failed, it leaves the workbook as it was.
 */
export function upgradeLog(plan: WorkbookPlan, work: LongWork = {}): Promise<BuildReport> {
  return writeLog(plan, "changed", work);
}

/** Writes every formula of the log anew, where cells show #NAME? after the add-in was missing; adds what is missing as well. */
export function repairFormulas(plan: WorkbookPlan, work: LongWork = {}): Promise<BuildReport> {
  return writeLog(plan, "all", work);
}

/** The unit system that a damaged log names; undefined where even that is gone. */
export function readSystem(): Promise<UnitSystem | undefined> {
  return inExcel(async (context) => {
    const name = context.workbook.names.getItemOrNullObject(findField(jobLog, "unitSystem").name);
    name.load("name");
    await context.sync();
    if (name.isNullObject) return undefined;
    const cell = name.getRange().load("values");
    await context.sync();
    return unitSystems.find((system) => system === cell.values[0]?.[0]);
  });
}

/** The log's rows and fields; undefined where the workbook holds none. Rejects with a LogProblem for a damaged log. */
export async function readLog(): Promise<LogSnapshot | undefined> {
  try {
    return await Excel.run((context) => readTables(context, jobLog));
  } catch (error) {
    const missing = officeCode(error) === "ItemNotFound" || officeCode(error) === "InvalidReference";
    if (!missing) throw problemFrom(error);
    return inExcel((context) => explainMissing(context, jobLog));
  }
}

/**
 * Adds rows, fills in blank cells of earlier ones and changes others and named cells: one read trip, one write trip.
 * Rejects with a LogProblem, with nothing changed, where a cell no longer holds what the person saw or cannot be
 * written. The receipt lets it be taken back, but for named cells.
 */
export async function editLog(edit: LogEdit): Promise<Receipt> {
  const { writeEdit } = await import(
    /* webpackChunkName: "log-writer", webpackPrefetch: true */ "./record/append-rows.ts"
  );
  return inExcel((context) => writeEdit(context, jobLog, edit));
}

/** Takes back what `editLog` wrote; rejects with a LogProblem, and changes nothing, where it was changed since. */
export async function takeBack(receipt: Receipt): Promise<void> {
  const { removeEntry } = await import(
    /* webpackChunkName: "log-writer", webpackPrefetch: true */ "./record/take-back-rows.ts"
  );
  return inExcel((context) => removeEntry(context, jobLog, receipt));
}

/** Puts a formula in the selected cell and gives the cell's address; a cell that holds something is refused. */
export function insertFormula(formula: string): Promise<string> {
  return inExcel(async (context) => {
    const cell = context.workbook.getActiveCell().load("address,formulas");
    await context.sync();
    if (cell.formulas[0]?.[0] !== "") {
      throw new LogProblem({
        what: `Cell ${cell.address} already holds something.`,
        remedy: "Select a blank cell, then try again.",
      });
    }
    cell.formulas = [[formula]];
    cell.select();
    await context.sync();
    return cell.address;
  });
}

/**
 * Calls `changed` after any change to any sheet, by anyone, and `calculated` whenever Excel has finished calculating:
 * figures that come later than the change raise no event of a change. Resolves to a function that stops it.
 */
export async function onLogChanged(changed: () => void, calculated: () => void): Promise<() => Promise<void>> {
  const registrations = await inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const calling = (handler: () => void) => (): Promise<void> => {
      handler();
      return Promise.resolve();
    };
    const added = [
      worksheets.onChanged.add(calling(changed)),
      worksheets.onCalculated.add(calling(calculated)),
    ] as const;
    await context.sync();
    return added;
  });
  return async () => {
    const [first] = registrations;
    await Excel.run(first.context, async (context) => {
      for (const registration of registrations) registration.remove();
      await context.sync();
    });
  };
}
