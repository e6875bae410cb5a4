import { ArrowUpRegular } from "@fluentui/react-icons/svg/arrow-up";
import { MathFormulaRegular } from "@fluentui/react-icons/svg/math-formula";
import { WrenchRegular } from "@fluentui/react-icons/svg/wrench";

import type { BuildReport } from "../../excel/build/write-plan.ts";
import { editLog, readLog, readSystem, repairFormulas, upgradeLog } from "../../excel/log-workbook.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import type { WorkbookPlan } from "../../joblog/model/plan.ts";
import type { Action } from "../record/action.ts";

/** The log as it should be, in the units that it was built with, without rows: what is typed stays as it is. */
async function wholeLog(): Promise<WorkbookPlan> {
  return layOut(jobLog, { system: (await readSystem()) ?? "US" }, { fields: {}, rows: {} });
}

export interface Mended extends BuildReport {
  /** Claims that got their row in Shares, each with its bath. */
  readonly shared?: readonly string[];
}

export type MendAction = Action<undefined, Mended>;

/** Adds the rows that Shares lacks for loads typed by hand: without one a claim pays nothing. */
async function addShares(): Promise<readonly string[]> {
  const [{ sharesToAdd }, log] = await Promise.all([
    import(/* webpackChunkName: "pane-figures" */ "../../advice/share-rows.ts"),
    readLog(),
  ]);
  const rows = log === undefined ? [] : sharesToAdd(log);
  if (rows.length > 0) await editLog({ rows });
  return rows.map(({ row: { bath = "", claim = "" } }) => `${String(claim)} in ${String(bath)}`);
}

/** Adds what a damaged log lacks, and writes anew the formulas that broke with what was lost. */
export const mendLog: MendAction = {
  name: "Add what is missing",
  icon: WrenchRegular,
  needs: "nothing",
  run: async (_, work) => upgradeLog(await wholeLog(), work),
};

/** Brings a log of an earlier version up to date. */
export const bringUpToDate: MendAction = {
  name: "Upgrade the log",
  icon: ArrowUpRegular,
  needs: "nothing",
  run: async (_, work) => upgradeLog(await wholeLog(), work),
};

/** Writes the formulas of the log anew where cells show #NAME?, and adds what Shares lacks. */
export const repairLog: MendAction = {
  name: "Repair formulas",
  icon: MathFormulaRegular,
  needs: "log",
  run: async (_, work) => {
    const report = await repairFormulas(await wholeLog(), work);
    return { ...report, shared: await addShares() };
  },
};
