import type { Job } from "../../../src/command-line/job/job-schema.ts";
import type { UnitSystem } from "../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { contentIn } from "../../demo/metric/week-in.ts";
import { fullWeek } from "../joblog/sheets/hostile-log.ts";

const inSystem = (content: LogContent, system: UnitSystem): LogContent =>
  system === "US" ? content : contentIn(content, system);

const jobOf = ({ fields, rows }: LogContent, system: UnitSystem): Job => ({
  log: jobLog.version,
  system,
  fields,
  rows,
});

/** The invented week with something on every sheet that reckons. */
export const weekJob = (system: UnitSystem): Job => jobOf(inSystem(fullWeek, system), system);

export const daysJob = (system: UnitSystem): Job => jobOf(inSystem(firstTwoDays, system), system);
