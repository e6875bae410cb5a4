import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { Worker } from "node:worker_threads";

import { build as bundle } from "esbuild";

import { keptFolder, projectFolder } from "../project.ts";
import { fingerprintOfTexts } from "./fingerprint.ts";

/** The files of the invented week by name: the workbench's opening state, and what had been typed by the week's end. */
export type WeekFiles = Readonly<Record<string, string>>;

const folder = path.join(keptFolder, "week");

/** The code that types the week, with all that it imports in one text: what does not change this text cannot change the week. */
async function typingCode(): Promise<string> {
  const { outputFiles } = await bundle({
    entryPoints: [path.join(projectFolder, "scripts", "build", "week-worker.ts")],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    mainFields: ["module", "main"],
    logLevel: "error",
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error("The code that types the week came to nothing.");
  return file.text;
}

async function typeWeek(codeFile: string, functionsScript: string): Promise<WeekFiles> {
  const worker = new Worker(codeFile, { workerData: functionsScript });
  return new Promise((resolve, reject) => {
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.once("exit", () => {
      reject(new Error("Typing the week ended without a result."));
    });
  });
}

/**
 * The invented week, typed into the pane's forms with the functions of a built functions.js. It is kept under a name
 * made of the code that types it and those functions, and taken from there as long as neither changes.
 */
export async function weekFiles(functionsScript: string): Promise<WeekFiles> {
  const code = await typingCode();
  const name = fingerprintOfTexts(code, functionsScript, process.version);
  const keptFile = path.join(folder, `${name}.json`);
  const kept = await readFile(keptFile, "utf8").catch(() => undefined);
  if (kept !== undefined) return JSON.parse(kept) as WeekFiles;

  await mkdir(folder, { recursive: true });
  const codeFile = path.join(folder, `${name}.mjs`);
  await writeFile(codeFile, code);
  const week = await typeWeek(codeFile, functionsScript);
  for (const older of await readdir(folder)) await rm(path.join(folder, older));
  // Named last, so that a file under the kept name is always a whole one.
  await writeFile(`${keptFile}.part`, JSON.stringify(week));
  await rename(`${keptFile}.part`, keptFile);
  return week;
}
