import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import { typedLog } from "../../joblog/layout/typed-cells.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Job } from "../job/job-schema.ts";
import { contentOfJob } from "../job/read-job.ts";

/** A log of the job before any formula of it was worked out. */
export function snapshotOf(job: Job): LogSnapshot {
  return typedLog(layOut(jobLog, { system: job.system }, contentOfJob(job)));
}
