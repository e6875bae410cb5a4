import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";

import type { KnownValue, ValueOf } from "../src/files/cell-value.ts";
import { writeWorkbook } from "../src/files/xlsx-writer.ts";
import type { LogContent } from "../src/joblog/model/definition.ts";
import { readWeek } from "../src/pane/demo/read-week.ts";
import { buildHeadlessLog } from "./build/headless-log.ts";
import { distFolder, projectFolder } from "./project.ts";
import { tourFile, tourWorkbook } from "./tour/tour-workbook.ts";

export const samplesFolder = path.join(projectFolder, "sample-workbooks");

/** Grid errors that a file can hold; anything else that starts with # would be a fault of the grid. */
const errorName = /^#(?:N\/A|VALUE!|DIV\/0!|NUM!|REF!|NAME\?|NULL!)$/;

function knownValue(value: string | number | boolean): KnownValue {
  if (typeof value !== "string" || !value.startsWith("#")) return value;
  if (!errorName.test(value)) throw new RangeError(`The grid answered ${value}, which a file cannot hold.`);
  return { error: value };
}

/**
 * A log as an .xlsx file. The add-in's own code builds it in the workbench's grid and the built
 * functions answer; the values that stand there afterwards go into the file beside the formulas.
 */
export async function sampleWorkbook(functionsScript: string, content: LogContent): Promise<Uint8Array> {
  const { host, plan } = await buildHeadlessLog(functionsScript, content);
  const sheets = new Map(plan.sheets.map((sheet) => [sheet.name, host.values(sheet.name)] as const));
  const valueOf: ValueOf = (sheet, row, column) => knownValue(sheets.get(sheet)?.[row]?.[column] ?? "");
  return writeWorkbook(plan, valueOf);
}

export const emptySample = "empty-job-log.xlsx";
export const weekSample = "demo-week.xlsx";

/** The samples that are job logs, by file name; the week is what the build typed into the pane's forms. */
async function logSamples(): Promise<Readonly<Record<string, LogContent>>> {
  const week = readWeek(await readFile(path.join(distFolder, "demo-week-log.json"), "utf8"));
  return { [weekSample]: week, [emptySample]: { fields: {}, rows: {} } };
}

async function buildSamples(): Promise<void> {
  const functionsScript = await readFile(path.join(distFolder, "functions.js"), "utf8");
  await mkdir(samplesFolder, { recursive: true });
  for (const [name, content] of Object.entries(await logSamples())) {
    await writeFile(path.join(samplesFolder, name), await sampleWorkbook(functionsScript, content));
    console.log(`wrote sample-workbooks/${name}`);
  }
  await writeFile(path.join(samplesFolder, tourFile), await tourWorkbook(functionsScript));
  console.log(`wrote sample-workbooks/${tourFile}`);
}

if (process.argv[1] === import.meta.filename) await buildSamples();
