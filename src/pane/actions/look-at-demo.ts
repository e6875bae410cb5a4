import { PlayRegular } from "@fluentui/react-icons/svg/play";
import { buildLog } from "../../excel/log-workbook.ts";
import type { BuildReport } from "../../excel/write-plan.ts";
import { firstTwoDays } from "../../joblog/demo-week.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/lay-out.ts";
import type { Action } from "./action.ts";

/** Builds a log filled with two days of an invented shop. */
export const lookAtDemo: Action<undefined, BuildReport> = {
  name: "Look at the demo days",
  icon: PlayRegular,
  needs: "nothing",
  run: () => buildLog(layOut(jobLog, { system: "US" }, firstTwoDays)),
};
