import { TableAddRegular } from "@fluentui/react-icons/svg/table-add";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { BuildReport } from "../../excel/build/write-plan.ts";
import { buildLog } from "../../excel/log-workbook.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import type { LogContent } from "../../joblog/model/definition.ts";
import type { Action } from "../record/action.ts";

/** Builds the log in this workbook with the shop's own tank, water and concentrate. */
export const startLog: Action<{ readonly system: UnitSystem; readonly content: LogContent }, BuildReport> = {
  name: "Build log",
  icon: TableAddRegular,
  needs: "nothing",
  run: ({ system, content }, work) => buildLog(layOut(jobLog, { system }, content), work),
};
