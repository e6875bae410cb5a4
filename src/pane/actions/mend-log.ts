import { WrenchRegular } from "@fluentui/react-icons/svg/wrench";
import { buildLog, readSystem } from "../../excel/log-workbook.ts";
import type { BuildReport } from "../../excel/write-plan.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/lay-out.ts";
import type { Action } from "./action.ts";

/** Adds the tables and named cells that a damaged log lacks; what is there stays as it is. */
export const mendLog: Action<undefined, BuildReport> = {
  name: "Add what is missing",
  icon: WrenchRegular,
  needs: "nothing",
  run: async () => buildLog(layOut(jobLog, { system: (await readSystem()) ?? "US" }, { fields: {}, rows: {} })),
};
