/**
 * src/excel is tested on Microsoft's object model, which asks the stand-in's workbook but not the stand-in's own objects.
 * The workbench has those. Here a log is built, written to, taken back, repaired and upgraded on them, and each member
 * of Excel's API that src/excel names is called at least once.
 *
 * @module-tag landing
 */
import { readdirSync } from "node:fs";
import path from "node:path";

import { beforeAll, describe, expect, test } from "vitest";

import { usedMembers } from "../../scripts/api-floor/used-sets.ts";
import { projectFolder } from "../../scripts/project.ts";
import { Cancelled, OlderLog } from "../../src/excel/log-problems.ts";
import {
  buildLog,
  editLog,
  insertFormula,
  onLogChanged,
  readLog,
  readSystem,
  repairFormulas,
  takeBack,
  upgradeLog,
} from "../../src/excel/log-workbook.ts";
import { readActiveSheet } from "../../src/excel/read/read-active-sheet.ts";
import { showSheet } from "../../src/excel/show-sheet.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import { layOut } from "../../src/joblog/layout/lay-out.ts";
import type { LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import { firstTwoDays } from "../demo/days/demo-week.ts";
import { contentOfThen, earlierLog, muchLater, shapeOfThen } from "../unit/excel/log/earlier-log.ts";
import { openWorkbook } from "../unit/excel/log/open-workbook.ts";
import { stillPlan } from "../unit/excel/log/still-log.ts";
import { listenToExcel } from "./members-called.ts";

/** What Office and the Excel namespace answer under both judges alike, by no request. */
const ofNoRequest: ReadonlySet<string> = new Set([
  "Addin.setStartupBehavior",
  "Document.getFileAsync",
  "Error",
  "File.closeAsync",
  "File.getSliceAsync",
  "createWorkbook",
]);

/** Objects that the add-in makes itself and hands over: their parts are known by name alone. */
const handedOver = /^(?:PageLayoutZoomOptions|DataValidationRule|DataValidationErrorAlert)(?=\.)/;

const earlier = earlierLog(muchLater);
const content = contentOfThen(earlier, firstTwoDays);
const released = { [earlier.version]: shapeOfThen(earlier) };
const today = stillPlan(layOut({ ...jobLog, released }, { system: "US" }, { fields: {}, rows: {} }));
const reading = { id: "R011", bath: "B-T1-0301", when: 46449.3, purpose: "check", ph: 10.83 } as const;

let called: ReadonlySet<string>;

async function presentLog(): Promise<LogSnapshot> {
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}

async function typeHeader(table: string, from: string, to: string): Promise<void> {
  await Excel.run(async (context) => {
    const header = context.workbook.tables.getItem(table).getHeaderRowRange().load("values");
    await context.sync();
    header.values = header.values.map((line) => line.map((text: unknown) => (text === from ? to : text)));
    await context.sync();
  });
}

beforeAll(() => {
  openWorkbook("stand-in");
  called = listenToExcel();
});

describe("on the stand-in's own objects", () => {
  test("a log is built, and upgraded after an upgrade that was cancelled near its end", async () => {
    expect(await readLog()).toBeUndefined();
    await buildLog(stillPlan(layOut(earlier, { system: "US" }, content)));
    const stop = new AbortController();
    const cancelled = upgradeLog(today, {
      signal: stop.signal,
      onProgress: ({ step, of }) => {
        if (step === of) stop.abort();
      },
    });
    await expect(cancelled).rejects.toBeInstanceOf(Cancelled);
    await expect(readLog()).rejects.toBeInstanceOf(OlderLog);
    expect((await upgradeLog(today)).fromVersion).toBe(earlier.version);
    expect((await presentLog()).rows.readings.map(({ cells }) => cells.ph)).toEqual(
      content.rows.readings?.map(({ ph }) => ph),
    );
  });

  test("an entry is written and taken back, cells are changed", async () => {
    const before = await presentLog();
    const receipt = await editLog({
      rows: [
        { table: "readings", row: reading },
        { table: "readings", row: { ...reading, id: "R012" } },
      ],
      fills: [{ table: "readings", key: "R002", cells: { pTitre: 2 } }],
    });
    expect((await presentLog()).rows.readings.at(-1)?.cells).toMatchObject({ id: "R012", ph: 10.83 });
    await takeBack(receipt);
    expect(await presentLog()).toEqual(before);
    await editLog({
      fields: { permit: { before: undefined, after: "P-1" } },
      changes: [{ table: "readings", position: 0, cells: { initials: { before: "KT", after: "AB" } } }],
    });
    const { fields, rows } = await presentLog();
    expect([fields.permit, rows.readings[0]?.cells.initials]).toEqual(["P-1", "AB"]);
  });

  test("formulas are repaired beside a table that may be filtered, and a renamed column is named", async () => {
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Readings").showFilterButton = true;
      await context.sync();
    });
    expect((await repairFormulas(today)).rewritten).toBeGreaterThan(50);
    await typeHeader("Readings", "pH as read", "pee aitch");
    await expect(readLog()).rejects.toThrow(/column "pH as read" of table Readings .* missing or renamed/);
    await typeHeader("Readings", "pee aitch", "pH as read");
    expect(await readSystem()).toBe("US");
  });

  test("a sheet is shown, read, and takes a formula; changes are heard until they are no longer listened to", async () => {
    await showSheet("readings");
    expect((await readActiveSheet()).name).toBe("Readings");
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Own").activate();
      await context.sync();
    });
    let heard = 0;
    const stop = await onLogChanged(
      () => {
        heard += 1;
      },
      () => undefined,
    );
    expect(await insertFormula("=1+1")).toMatch(/A1$/);
    await new Promise((resume) => setTimeout(resume, 0));
    await stop();
    expect(heard).toBe(1);
  });

  test("a series of a chart is taken away, then the chart", async () => {
    const found = await Excel.run(async (context) => {
      const worksheet = context.workbook.worksheets.getItem("Own");
      worksheet.getRange("C1:D3").values = [
        ["pH", "Trigger"],
        [11.4, 10.9],
        [11.3, 10.9],
      ];
      const chart = worksheet.charts.add("Line", worksheet.getRange("C1:D3"), "Columns");
      chart.name = "Own";
      const before = chart.series.load("items/name");
      await context.sync();
      const made = before.items.length;
      before.items.at(-1)?.delete();
      const after = chart.series.load("items/name");
      await context.sync();
      const kept = after.items.length;
      worksheet.charts.getItemOrNullObject("Own").delete();
      const gone = worksheet.charts.getItemOrNullObject("Own").load("name");
      await context.sync();
      return { made, kept, isGone: gone.isNullObject };
    });
    expect(found).toEqual({ made: 2, kept: 1, isGone: true });
  });

  // Last: it tells of the tests before it.
  test("each member of Excel's API that src/excel uses was called", () => {
    const folder = path.join(projectFolder, "src", "excel");
    const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
      // What the checks of an Excel ask for they ask in tests of their own.
      .filter((file) => file.endsWith(".ts") && file.split(path.sep)[0] !== "check")
      .map((file) => path.join(folder, file));
    const used = [...new Set(usedMembers(files).map(({ member }) => member))].filter((one) => !ofNoRequest.has(one));
    expect(used.length).toBeGreaterThan(100);
    expect(used.filter((member) => !called.has(member.replace(handedOver, "")))).toEqual([]);
  });
});
