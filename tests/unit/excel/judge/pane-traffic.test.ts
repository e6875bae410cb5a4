/**
 * What every action of the pane sends to Excel and gets back, as a table in the documents.
 *
 * @module-tag landing
 */
import { readFileSync } from "node:fs";
import path from "node:path";

import { expect, test } from "vitest";

import { projectFolder } from "../../../../scripts/project.ts";
import * as store from "../../../../src/excel/log-workbook.ts";
import { readActiveSheet } from "../../../../src/excel/read/read-active-sheet.ts";
import type { LogEdit } from "../../../../src/excel/record/log-edit.ts";
import { showSheet } from "../../../../src/excel/show-sheet.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { putFormulasBack, settleBath } from "../../../../src/pane/settle/settle-bath.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { contentOfThen, earlierLog, muchLater, shapeOfThen } from "../log/earlier-log.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { daysWithReadings, readingsOf, stillLog } from "../log/still-log.ts";
import { wireOf } from "./judged-excel.ts";
import type { Request } from "./request-executor.ts";

interface Measured {
  readonly action: string;
  readonly requests: readonly Request[];
}

const measured: Measured[] = [];

let host: Host;

function wire(): Request[] {
  const found = wireOf(host);
  if (found === undefined) throw new Error("The stand-in has no wire.");
  return found.requests;
}

/** Also holds the stand-in's estimate of the largest request to what goes over the wire. */
async function measure<Value>(action: string, work: () => Promise<Value>): Promise<Value> {
  wire().length = 0;
  host.session.traffic.largestOut = 0;
  const value = await work();
  // The library releases its references after Excel.run has resolved.
  await new Promise((resume) => setTimeout(resume, 0));
  const requests = [...wire()];
  measured.push({ action, requests });
  const largest = Math.max(...requests.map(({ bytes }) => bytes));
  expect(host.session.traffic.largestOut, `estimate of "${action}"`).toBeGreaterThanOrEqual(largest);
  return value;
}

const pagePath = "docs/excel-traffic.md";

/** The limits that the page holds, by action. */
const limitsOnPage = new Map(
  readFileSync(path.join(projectFolder, pagePath), "utf8")
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .map(([, action = "", , ...limits]) => [action, limits.map(Number)] as const),
);

const step = (kilobytes: number): number =>
  kilobytes <= 10 ? 5 : kilobytes <= 100 ? 25 : kilobytes <= 1000 ? 100 : 500;

/**
 * A limit in kilobytes, rounded up to a coarse step. One that stands on the page stays there as long as what is sent is
 * under it and not under it by more than a step, so that a formula's few bytes move no line.
 */
function limitFor(bytes: number, onPage: number | undefined): string {
  const kilobytes = bytes / 1000;
  const roundedUp = Math.ceil(kilobytes / step(kilobytes)) * step(kilobytes);
  const holds = onPage !== undefined && kilobytes <= onPage && onPage <= roundedUp + step(roundedUp);
  return String(holds ? onPage : roundedUp);
}

function lineOf({ action, requests }: Measured): string {
  const onPage = limitsOnPage.get(action) ?? [];
  const most = (of: (request: Request) => number): number => Math.max(...requests.map(of));
  const sizes = [
    requests.reduce((sum, { bytes }) => sum + bytes, 0),
    most(({ bytes }) => bytes),
    most(({ answerBytes }) => answerBytes),
  ];
  return `| ${[action, String(requests.length), ...sizes.map((bytes, index) => limitFor(bytes, onPage[index]))].join(" | ")} |`;
}

function page(): string {
  return [
    "# What goes between the pane and Excel",
    "",
    "Requests, and limits of their sizes in kB, as Microsoft's object model for Excel on the web sends them, with the release",
    "of its references after each action. The limits are rounded up to steps of 5, 25, 100 and 500 kB; Excel on the web",
    "takes and gives 5,000 kB at once. Measured by `tests/unit/excel/judge/pane-traffic.test.ts`, which fails above a limit",
    "and where a limit is more than a step too high; `npm run traffic` writes this page anew.",
    "",
    "| action | requests | kB out in all, up to | largest out, up to | largest in, up to |",
    "|---|--:|--:|--:|--:|",
    ...measured.map(lineOf),
    "",
  ].join("\n");
}

const reading: LogRow<"readings"> = { id: "R011", bath: "B-T1-0301", when: 46449.3, purpose: "check", ph: 10.83 };
const addition: LogRow<"additions"> = {
  id: "A005",
  bath: "B-T1-0301",
  when: 46449.33,
  kind: "concentrate",
  purpose: "top-up",
  amount: 1.39,
  account: "claims",
};
const nothingTyped = { fields: {}, rows: {} };

async function ordinaryDay(): Promise<void> {
  const plan = layOut(jobLog, { system: "US" }, firstTwoDays);
  host = openWorkbook("web");
  await measure("look for a log where there is none", store.readLog);
  await measure("start a log (the first two demo days)", () => store.buildLog(plan));
  await measure("read the log", store.readLog);
  await measure("record a reading", () => store.editLog({ rows: [{ table: "readings", row: reading }] }));
  await measure("record an addition", () => store.editLog({ rows: [{ table: "additions", row: addition }] }));
  const later: LogEdit = {
    rows: [{ table: "readings", row: { ...reading, id: "R012", ph: 11.1 } }],
    fills: [{ table: "additions", key: "A005", cells: { phAfter: 11.1 } }],
  };
  const receipt = await measure("record a reading and fill in an addition", () => store.editLog(later));
  await measure("take an entry back", () => store.takeBack(receipt));
  const permit = { before: undefined, after: "P-1" };
  await measure("change a limit of the shop", () => store.editLog({ fields: { permit } }));
  await measure("show a sheet", () => showSheet("readings"));
  await measure("read the open sheet", readActiveSheet);
  await measure("read a damaged log's unit system", store.readSystem);
  await Excel.run(async (context) => {
    context.workbook.worksheets.add("Own").activate();
    await context.sync();
  });
  await measure("insert a formula", () => store.insertFormula("=1+1"));
  const again = layOut(jobLog, { system: "US" }, nothingTyped);
  await measure("add what is missing, where nothing is", () => store.buildLog(again));
  await measure("repair formulas", () => store.repairFormulas(again));
}

async function upgrade(): Promise<void> {
  const earlier = earlierLog(muchLater);
  const released = { [earlier.version]: shapeOfThen(earlier) };
  host = openWorkbook("web");
  await store.buildLog(layOut(earlier, { system: "US" }, contentOfThen(earlier, firstTwoDays)));
  const plan = layOut({ ...jobLog, released }, { system: "US" }, nothingTyped);
  await measure("upgrade a log of an earlier version", () => store.upgradeLog(plan));
}

/** A bath of the usual number of readings, one beneath the other, that was changed out. */
async function settling(): Promise<void> {
  host = openWorkbook("web");
  const content = daysWithReadings(30);
  const baths = (content.rows.baths ?? []).map((row) => ({ ...row, closed: 46460, closeReason: "spent" }));
  await store.buildLog(layOut(jobLog, { system: "US" }, { ...content, rows: { ...content.rows, baths } }));
  const settled = { bath: "B-T1-0301", by: "TF", now: "2027-03-20T09:00" };
  await measure("settle a bath of 30 readings", () => settleBath.run(settled));
  await measure("put its formulas back", () => putFormulasBack.run(settled));
}

async function adoption(): Promise<void> {
  host = openWorkbook("web");
  await store.buildLog(stillLog(firstTwoDays));
  const baths = Array.from({ length: 150 }, (_, index) => ({
    table: "baths" as const,
    row: { bath: `B-T2-${String(index)}`, tank: "T2" },
  }));
  const adopted = readingsOf(200, "X").map((row) => ({ table: "readings" as const, row }));
  await measure("adopt 200 readings of 150 baths", () => store.editLog({ rows: [...baths, ...adopted] }));
}

test("the table of requests and sizes is up to date, and no action passes what Excel on the web takes", async () => {
  await ordinaryDay();
  await upgrade();
  await settling();
  await adoption();
  const largest = measured.flatMap(({ requests }) => requests.flatMap((one) => [one.bytes, one.answerBytes]));
  expect(Math.max(...largest)).toBeLessThan(3_000_000);
  await expect(page()).toMatchFileSnapshot(path.join(projectFolder, pagePath));
}, 300_000);
