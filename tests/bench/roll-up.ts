import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { crc32 } from "node:zlib";

import * as cells from "@e965/xlsx";
import exceljs from "exceljs";
import { unzipSync, zipSync } from "fflate";

import { projectFolder } from "../../scripts/project.ts";
import { readLogFile } from "../../src/command-line/commands/read.ts";
import { typedTables } from "../../src/command-line/job/job-schema.ts";
import { writeLog } from "../../src/command-line/job/write-log.ts";
import { zipDirectory } from "../../src/files/zip-directory.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import type { LogContent } from "../../src/joblog/model/definition.ts";
import { largeLog } from "./large-log.ts";
import { median } from "./median.ts";

const readings = 200;

/** Logs of one reading through; the libraries read each file at the same time as ours does, one after the other. */
const compared = 20;

/** Processor time in ms, which is the same however busy the machine is with other things. */
async function timeOf(work: () => unknown): Promise<number> {
  const start = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** The sheets on which someone types, which is what the roll-up reads. */
const typedSheets = jobLog.sheets
  .filter(
    ({ tables, fields }) =>
      tables.some((one) => typedTables.includes(one)) || fields.some(({ formula }) => formula === undefined),
  )
  .map(({ name }) => name);

/** Each cell of these sheets, looked at once. */
async function withExceljs(file: Uint8Array): Promise<number> {
  const workbook = new exceljs.Workbook();
  await workbook.xlsx.load(Buffer.from(file).buffer);
  let filled = 0;
  for (const name of typedSheets)
    workbook.getWorksheet(name)?.eachRow((row) => {
      row.eachCell(() => {
        filled += 1;
      });
    });
  return filled;
}

/** With all that can be switched off switched off. */
function withXlsx(file: Uint8Array): number {
  const workbook = cells.read(file, {
    sheets: typedSheets,
    cellFormula: false,
    cellHTML: false,
    cellText: false,
    cellStyles: false,
    dense: true,
  });
  return Object.keys(workbook.Sheets).length;
}

async function benchReading(log: Uint8Array): Promise<void> {
  const times = { ours: [] as number[], exceljs: [] as number[], xlsx: [] as number[] };
  for (let round = 0; round < compared; round += 1) {
    const [ours, first, second] = [
      await timeOf(() => readLogFile("log.xlsx", log)),
      await timeOf(() => withExceljs(log)),
      await timeOf(() => withXlsx(log)),
    ];
    // The first rounds compile.
    if (round < 8) continue;
    times.ours.push(ours);
    times.exceljs.push(first);
    times.xlsx.push(second);
  }
  const [ours, first, second] = [median(times.ours), median(times.exceljs), median(times.xlsx)];
  const ratio = Math.min(first, second) / ours;
  console.log(
    `reading a log of ${String(readings)} readings: ${ours.toFixed(0)} ms of processor time, exceljs ${first.toFixed(0)} ms, ` +
      `@e965/xlsx ${second.toFixed(0)} ms; ${ratio.toFixed(1)} times as fast as the faster (goal 4)`,
  );
}

const texts = "xl/sharedStrings.xml";

/** Copies of a log that differ in a claim's name, each as quickly as its bytes can be copied. */
function copier(log: Uint8Array): (number: number) => Uint8Array {
  const parts = Object.entries(unzipSync(log));
  const template = zipSync(
    Object.fromEntries(parts.map(([name, content]) => [name, [content, { level: name === texts ? 0 : 6 }] as const])),
  );
  const entry = zipDirectory(template).find(({ name }) => name === texts);
  if (entry === undefined) throw new Error("The log has no texts.");
  const header = Buffer.from(template.buffer, template.byteOffset, template.byteLength);
  const from = entry.at + 30 + header.readUInt16LE(entry.at + 26) + header.readUInt16LE(entry.at + 28);
  const claim = header.indexOf(">D-0427<", from) + ">D-".length;
  const listed = header.lastIndexOf(texts) - 46;
  return (number) => {
    const copy = Buffer.from(header);
    copy.write(String(number).padStart(4, "0"), claim, "latin1");
    const sum = crc32(copy.subarray(from, from + entry.unpacked));
    copy.writeUInt32LE(sum, entry.at + 14);
    copy.writeUInt32LE(sum, listed + 16);
    return copy;
  };
}

/**
 * Says at the end what memory the program had at most, in kB. Linux counts in maxRSS what the program had that started
 * this one, so it is asked elsewhere.
 */
const sayMemory = `
import { readFileSync } from "node:fs";
process.on("exit", () => {
  const ofLinux = process.platform === "linux" && /VmHWM:\\s*(\\d+)/.exec(readFileSync("/proc/self/status", "utf8"));
  process.stderr.write("most " + (ofLinux ? ofLinux[1] : process.resourceUsage().maxRSS));
});`;

/** What a roll-up of so many logs takes, in a program of its own: seconds and the most memory in MB. */
function rolledUp(
  copyOf: (number: number) => Uint8Array,
  count: number,
): { readonly seconds: number; readonly megabytes: number } {
  const folder = mkdtempSync(path.join(tmpdir(), "bathsheet-bench-"));
  try {
    mkdirSync(path.join(folder, "logs"));
    for (let at = 0; at < count; at += 1)
      writeFileSync(path.join(folder, "logs", `log-${String(at).padStart(4, "0")}.xlsx`), copyOf(at));
    const program = path.join(projectFolder, "bin", "bathsheet.js");
    const start = performance.now();
    const { stdout, stderr, status } = spawnSync(
      process.execPath,
      [
        "--import",
        `data:text/javascript,${encodeURIComponent(sayMemory)}`,
        program,
        "rollup",
        "logs",
        "-o",
        "group.xlsx",
      ],
      { cwd: folder, encoding: "utf8" },
    );
    const seconds = (performance.now() - start) / 1000;
    if (status !== 0 || !stdout.startsWith(`${String(count)} logs added up`)) throw new Error(stdout + stderr);
    return { seconds, megabytes: Number(/most (\d+)/.exec(stderr)?.[1]) / 1024 };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Reading beside two libraries, and roll-ups of growing folders. `counts` of 300 and 3,000 take a quarter of an hour. */
export async function benchRollUp(counts: readonly number[] = [30, 100, 300]): Promise<void> {
  const { fields, rows }: LogContent = largeLog(readings, readings / 5);
  const log = await writeLog({ log: 1, system: "US", fields: { ...fields }, rows: { ...rows } });
  await benchReading(log);
  const copyOf = copier(log);
  for (const count of counts) {
    const { seconds, megabytes } = rolledUp(copyOf, count);
    console.log(
      `roll-up of ${String(count)} logs: ${seconds.toFixed(1)} s, ${((seconds / count) * 1000).toFixed(0)} ms a log, ` +
        `at most ${megabytes.toFixed(0)} MB (goal 300)`,
    );
  }
}

if (process.argv[1] === import.meta.filename) await benchRollUp(process.argv.slice(2).map(Number));
