/** Writes down what the log's description says: its ids and words as types, and the shape of its version as long as that is not released. */
import { existsSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";

import { jobLog } from "../../src/joblog/job-log.ts";
import { sayFailure } from "../say-failure.ts";
import { added, type LogShape, lost, shapeFile, shapeOf, shapesFolder } from "./log-shape.ts";
import { logTypes, logTypesFile } from "./log-types.ts";

async function recordShape(): Promise<void> {
  const version = String(jobLog.version);
  const file = shapeFile(jobLog.version);
  const now = shapeOf(jobLog, false);
  const recorded = existsSync(file) ? (JSON.parse(await readFile(file, "utf8")) as LogShape) : undefined;
  const changes =
    recorded === undefined ? ["recorded for the first time"] : [...lost(recorded, now), ...added(recorded, now)];
  if (recorded?.released === true && changes.length > 0) {
    throw new Error(
      `Version ${version} of the job log is released, so its shape stays as it is: ${changes.join("; ")}. Raise version in src/joblog/job-log.ts first.`,
    );
  }
  if (recorded?.released !== true) {
    await mkdir(shapesFolder, { recursive: true });
    await writeFile(file, `${JSON.stringify(now, undefined, 2)}\n`);
  }
  console.log(`Shape of job log version ${version}: ${changes.length === 0 ? "as it was" : changes.join("; ")}.`);
}

await sayFailure(async () => {
  await writeFile(logTypesFile, logTypes());
  await recordShape();
});
