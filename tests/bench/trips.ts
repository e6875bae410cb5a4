import { readFile } from "node:fs/promises";
import path from "node:path";

import { buildHeadlessLog } from "../../scripts/build/headless-log.ts";
import { distFolder } from "../../scripts/project.ts";
import { editLog } from "../../src/excel/log-workbook.ts";
import type { Host } from "../../src/workbench/host/create-host.ts";
import { largeLog } from "./large-log.ts";

/** The trips to the workbook, and the cells they carry, of some work. */
async function traffic(host: Host, work: () => Promise<unknown>): Promise<string> {
  const before = { ...host.session.traffic };
  await work();
  const { trips, cellsRead, cellsWritten } = host.session.traffic;
  return `${String(trips - before.trips)} trips, ${String(cellsRead - before.cellsRead)} cells read, ${String(cellsWritten - before.cellsWritten)} written`;
}

/** Prints what building a log and recording a reading ask of the workbook, on a short log and on a long one. */
export async function benchTrips(): Promise<void> {
  const functionsScript = await readFile(path.join(distFolder, "functions.js"), "utf8");
  for (const readings of [100, 1000]) {
    const content = largeLog(readings, readings / 5);
    const { host } = await buildHeadlessLog(functionsScript, content);
    const { trips } = host.session.traffic;
    const last = content.rows.readings?.at(-1)?.["when"];
    if (typeof last !== "number") throw new RangeError("The long log holds no reading.");
    const row = {
      id: "R9999",
      bath: "B-T1-0301",
      when: last + 1 / 24,
      purpose: "check",
      ph: 11.1,
      temperature: 77,
      meter: "M-1",
    };
    const start = performance.now();
    const recorded = await traffic(host, () => editLog({ rows: [{ table: "readings", row }] }));
    console.log(
      `log of ${String(readings)} readings: built in ${String(trips)} trips (goal 12); a reading recorded in ${recorded}, ${(performance.now() - start).toFixed(0)} ms in the workbench's grid`,
    );
  }
}
