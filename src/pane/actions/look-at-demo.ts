import { PlayRegular } from "@fluentui/react-icons/svg/play";
import { buildLog } from "../../excel/log-workbook.ts";
import type { BuildReport } from "../../excel/write-plan.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/lay-out.ts";
import type { Action } from "./action.ts";

/** Builds a log filled with days of an invented shop, which are loaded only now. */
export const lookAtDemo: Action<undefined, BuildReport> = {
  name: "Look at the demo week",
  icon: PlayRegular,
  needs: "nothing",
  run: async (_, work) => {
    const { firstTwoDays } = await import("../../joblog/demo-week.ts");
    return buildLog(layOut(jobLog, { system: "US" }, firstTwoDays), work);
  },
};
