import { expect, it } from "vitest";

import { contentOfJob } from "../../../src/command-line/job/read-job.ts";
import { snapshotOf } from "../../../src/command-line/rollup/job-snapshot.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { typedLog } from "../../../src/joblog/layout/typed-cells.ts";
import { weekJob } from "./jobs.ts";

it.each(["US", "metric"] as const)("a %s job is taken as the log that is laid out of it", (system) => {
  const job = { ...weekJob(system), fields: { ...weekJob(system).fields, dropAllowed: null } };
  const laidOut = typedLog(layOut(jobLog, { system }, contentOfJob(job)));
  const taken = snapshotOf(job);
  expect(taken.rows).toEqual(laidOut.rows);
  expect(taken.fields).toEqual(laidOut.fields);
});
