import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import { baseUrl, distFolder, keptFolder, projectFolder } from "../project.ts";
import { fingerprintOfFiles, fingerprintOfTexts } from "./fingerprint.ts";

/** All that a build reads. The list of installed packages stands for what lies in node_modules. */
const inputs = [
  "assets",
  "functions",
  "scripts",
  "src",
  "LICENSE",
  "manifest.xml",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "rspack.config.ts",
  "node_modules/.package-lock.json",
];

const stampFile = path.join(keptFolder, "build-stamp");

/** What dist/ would be built from now. */
export async function inputsNow(): Promise<string> {
  return fingerprintOfTexts(
    await fingerprintOfFiles(projectFolder, inputs),
    process.version,
    process.platform,
    baseUrl(),
  );
}

async function stampOf(inputsThen: string): Promise<string> {
  return fingerprintOfTexts(inputsThen, await fingerprintOfFiles(distFolder, ["."]));
}

/** Whether dist/ is, to the byte, what was built from these inputs. */
export async function isBuiltFrom(inputsThen: string): Promise<boolean> {
  const stamp = await readFile(stampFile, "utf8").catch(() => undefined);
  return stamp !== undefined && stamp === (await stampOf(inputsThen));
}

/** Call before dist/ is touched: a build that stops halfway must not pass for a whole one. */
export async function removeStamp(): Promise<void> {
  await rm(stampFile, { force: true });
}

/** Call when dist/ is complete. */
export async function writeStamp(inputsThen: string): Promise<void> {
  await mkdir(keptFolder, { recursive: true });
  await writeFile(stampFile, await stampOf(inputsThen));
}
