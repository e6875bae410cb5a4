import { PlayRegular } from "@fluentui/react-icons/svg/play";

import type { BuildReport } from "../../excel/build/write-plan.ts";
import { buildLog } from "../../excel/log-workbook.ts";
import { LogProblem } from "../../excel/office-problems.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import type { LogContent } from "../../joblog/model/definition.ts";
import { readWeek } from "../demo/read-week.ts";
import type { Action } from "../record/action.ts";

/** What was typed in the invented week; one of the add-in's own files, fetched only when it is asked for. */
async function weekContent(): Promise<LogContent> {
  const response = await fetch("demo-week-log.json").catch(() => undefined);
  if (response?.ok !== true)
    throw new LogProblem({
      what: "The invented week could not be loaded. Nothing was written.",
      remedy: "Check the connection, then try again.",
    });
  return readWeek(await response.text());
}

/** Builds a log filled with the week of an invented shop. */
export const lookAtDemo: Action<undefined, BuildReport> = {
  name: "Look at the demo week",
  icon: PlayRegular,
  needs: "nothing",
  run: async (_, work) => buildLog(layOut(jobLog, { system: "US" }, await weekContent()), work),
};
