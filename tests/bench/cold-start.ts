import { spawnSync } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { gzipSize } from "../../scripts/check-sizes.ts";
import { distFolder } from "../../scripts/project.ts";
import { median } from "./median.ts";

const starts = 25;

/** Just enough of Excel's global to register with; the script fails where nothing was registered. */
const host = `let registered = 0;
globalThis.CustomFunctions = { associate() { registered += 1; }, Error: class {}, ErrorCode: {} };
process.on("exit", () => { if (registered === 0) process.exitCode = 1; });
`;

function milliseconds(script: string, exitCode: number): number {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, [script]);
  const elapsed = performance.now() - start;
  if (status !== exitCode) throw new Error(`${script} ended with ${String(status)}`);
  return elapsed;
}

/** Prints the size of functions.js and what it adds to the start of a Node process; needs dist/. */
export async function benchColdStart(): Promise<void> {
  const bundle = await readFile(path.join(distFolder, "functions.js"));
  const folder = await mkdtemp(path.join(tmpdir(), "bathsheet-"));
  try {
    const [empty, full] = [path.join(folder, "empty.cjs"), path.join(folder, "full.cjs")];
    await writeFile(empty, host);
    await writeFile(full, `${host}${bundle.toString()}`);
    const times = Array.from({ length: starts }, () => [milliseconds(empty, 1), milliseconds(full, 0)] as const);
    const [alone, together] = [median(times.map(([time]) => time)), median(times.map(([, time]) => time))];
    console.log(`\nfunctions.js: ${String(gzipSize(bundle))} bytes after gzip (goal 60,000)`);
    console.log(
      `evaluated and registered in a cold Node process: ${(together - alone).toFixed(1)} ms more than the ${alone.toFixed(1)} ms of an empty script, medians of ${String(starts)} (goal 30 ms)`,
    );
  } finally {
    await rm(folder, { recursive: true });
  }
}
