import { beforeEach, describe, expect, test } from "vitest";

import { Cancelled, DamagedLog, NewerLog, OlderLog } from "../../../src/excel/log-problems.ts";
import { buildLog, readLog, upgradeLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { headerOf } from "../../../src/joblog/model/headers.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import type { WorkbookState } from "../../../src/state/workbook-state.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { formulasByCell } from "../joblog/formula/formula-reader.ts";
import { contentOfThen, earlierLog, muchLater, shapeOfThen } from "./log/earlier-log.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { openLog } from "./log/prepared-log.ts";

/** With the rows that a new log starts with, and three shares, as many lines as it has. */
const started = Object.fromEntries(
  jobLog.sheets
    .flatMap((sheet) => sheet.tables)
    .flatMap(({ id, start }) => (start === undefined ? [] : [[id, start("US")]])),
);
const days = {
  ...firstTwoDays,
  rows: {
    ...started,
    ...firstTwoDays.rows,
    shares: [...(firstTwoDays.rows.shares ?? []), { claim: "D-0436", units: 0 }],
  },
};
const earlier = earlierLog(muchLater);
const content = contentOfThen(earlier, days);
const earlierPlan = layOut(earlier, { system: "US" }, content);
/** Today's plan, knowing of the made-up version what it would know of a released one. */
const plan = layOut(
  { ...jobLog, released: { [earlier.version]: shapeOfThen(earlier) } },
  { system: "US" },
  { fields: {}, rows: {} },
);

let host: Host;
let saved: WorkbookState | undefined;

/** Built once, and opened by every test as a shop opens the file of an earlier version. */
async function openEarlier(): Promise<void> {
  if (saved === undefined) {
    await buildLog(earlierPlan);
    saved = host.save();
  }
  host = openWorkbook();
  host.restore(saved);
}

beforeEach(() => {
  host = openWorkbook();
});

async function log(): Promise<LogSnapshot> {
  const snapshot = await readLog();
  if (snapshot === undefined) throw new Error("no log");
  return snapshot;
}

/** Every computed formula by table and column, of all rows, and by named cell. */
async function formulas(): Promise<Readonly<Record<string, readonly unknown[]>>> {
  return Excel.run(async (context) => {
    const ranges: (readonly [string, Excel.Range])[] = [];
    for (const table of jobLog.sheets.flatMap((sheet) => sheet.tables)) {
      for (const column of table.columns.filter(({ role }) => role === "computed")) {
        const range = context.workbook.tables
          .getItem(table.name)
          .columns.getItem(headerOf(column, "US"))
          .getDataBodyRange();
        ranges.push([`${table.name}[${column.id}]`, range.load("formulas")]);
      }
    }
    for (const field of jobLog.sheets.flatMap((sheet) => sheet.fields).filter(({ formula }) => formula !== undefined)) {
      ranges.push([field.name, context.workbook.names.getItem(field.name).getRange().load("formulas")]);
    }
    await context.sync();
    return Object.fromEntries(ranges.map(([name, range]) => [name, range.formulas.map((line) => line[0] as unknown)]));
  });
}

/** The log's charts by name. */
async function charts(): Promise<readonly string[]> {
  return Excel.run(async (context) => {
    const all = jobLog.sheets
      .filter(({ charts: own }) => own !== undefined)
      .map(({ name }) => context.workbook.worksheets.getItem(name).charts.load("items/name"));
    await context.sync();
    return all.flatMap(({ items }) => items.map(({ name }) => name)).sort();
  });
}

async function values(sheet: string, address: string): Promise<unknown[][]> {
  return Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(address).load("values");
    await context.sync();
    return range.values;
  });
}

/** All that the workbook holds, to the cell. */
function everything(): Readonly<Record<string, unknown>> {
  const { sheets, tables, names } = host.workbook;
  return {
    tables: tables.list().map(({ name, area, headers }) => ({ name, area, headers })),
    names: names.list(),
    sheets: Object.fromEntries(sheets.ids().map((sheet) => [sheets.nameOf(sheet), host.values(sheets.nameOf(sheet))])),
  };
}

describe("a log of an earlier version", () => {
  test("is no damaged log: it says its version and what to do", async () => {
    await openEarlier();
    const problem = await readLog().catch((error: unknown) => error);
    expect(problem).toBeInstanceOf(OlderLog);
    expect(problem).toMatchObject({ version: earlier.version, newest: jobLog.version });
    expect((problem as OlderLog).message).toMatch(/of version \d.*Upgrade it.*everything that was typed stays/);
  });

  test(
    "upgraded, holds what a new log of the same rows holds, formula by formula and figure by figure",
    { tags: "landing" },
    async () => {
      await openEarlier();
      const report = await upgradeLog(plan);
      expect(report.fromVersion).toBe(earlier.version);
      expect(report.added).toEqual(
        plan.sheets
          .filter((sheet) => !earlier.sheets.some(({ name }) => name === sheet.name))
          .map((sheet) => sheet.name),
      );
      expect(report.addedColumns.map(({ table }) => table)).toEqual(
        expect.arrayContaining(["Tanks", "Concentrates", "Baths", "Readings", "Additions", "Shares"]),
      );
      const then = formulasByCell(earlierPlan);
      const changed = [...formulasByCell(plan)].filter(
        ([cell, formula]) => then.has(cell) && then.get(cell) !== formula,
      );
      expect(changed.length).toBeGreaterThan(10);
      expect(report.rewritten).toBe(changed.length);
      const upgraded = { log: await log(), formulas: await formulas(), charts: await charts() };
      host = openWorkbook();
      await buildLog(layOut(jobLog, { system: "US" }, content));
      expect(upgraded.formulas).toEqual(await formulas());
      expect(upgraded.log).toEqual(await log());
      expect(upgraded.charts).toEqual(await charts());
      expect(upgraded.log.rows.readings).toHaveLength(10);
    },
  );

  test("does not get a chart back that its version had and the shop took away", { tags: "landing" }, async () => {
    await openEarlier();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Charts").charts.getItem("Bathsheet.Cost").delete();
      await context.sync();
    });
    await upgradeLog(plan);
    const after = await charts();
    expect(after).toContain("Bathsheet.Shares");
    expect(after).toContain("Bathsheet.pH");
    expect(after).not.toContain("Bathsheet.Cost");
  });

  test("whose own named cell was deleted gets it back where its label stands", { tags: "landing" }, async () => {
    await openEarlier();
    await Excel.run(async (context) => {
      context.workbook.names.getItem("Temperature.Gap").delete();
      await context.sync();
    });
    await upgradeLog(plan);
    expect((await log()).fields.temperatureGap).toBe(3.6);
  });
});

describe("the upgrade of an earlier log", { tags: "landing" }, () => {
  test("keeps the columns that a shop has added or moved, and its notes", async () => {
    await openEarlier();
    await Excel.run(async (context) => {
      const table = context.workbook.tables.getItem("Readings");
      const headers = table.getHeaderRowRange().load("values,rowIndex,columnIndex,columnCount");
      const body = table.getDataBodyRange().load("values,rowCount");
      await context.sync();
      const note = headers.values[0]?.indexOf("Note") ?? -1;
      const initials = headers.values[0]?.indexOf("Initials") ?? -1;
      const sheet = context.workbook.worksheets.getItem("Readings");
      table.resize(sheet.getRangeByIndexes(headers.rowIndex, 0, body.rowCount + 1, headers.columnCount + 1));
      sheet.getRangeByIndexes(headers.rowIndex, headers.columnCount, 3, 1).values = [["Weather"], ["rain"], ["sun"]];
      // Note and Initials change places.
      const column = (at: number): Excel.Range => sheet.getRangeByIndexes(headers.rowIndex, at, body.rowCount + 1, 1);
      const texts = (at: number): unknown[][] => [
        [headers.values[0]?.[at]],
        ...body.values.map((line) => [line[at] as unknown]),
      ];
      column(note).values = texts(initials);
      column(initials).values = texts(note);
      context.workbook.worksheets.getItem("Baths").getRange("B40").values = [["call Ann"]];
      await context.sync();
    });
    await upgradeLog(plan);
    const { rows } = await log();
    expect(rows.readings.map(({ cells }) => cells.initials)).toEqual(
      content.rows.readings?.map((row) => row["initials"]),
    );
    expect(rows.readings.map(({ cells }) => cells.note)).toEqual(content.rows.readings?.map((row) => row["note"]));
    const weather = await Excel.run(async (context) => {
      const range = context.workbook.tables
        .getItem("Readings")
        .columns.getItem("Weather")
        .getDataBodyRange()
        .load("values");
      await context.sync();
      return range.values.map((line) => line[0] as unknown);
    });
    expect(weather.slice(0, 2)).toEqual(["rain", "sun"]);
    expect(await values("Baths", "B40")).toEqual([["call Ann"]]);
  });

  test("holds new choices to this workbook's cells, wherever they stand", async () => {
    await openEarlier();
    await upgradeLog(plan);
    const rule = await Excel.run(async (context) => {
      const column = context.workbook.tables.getItem("Loads").columns.getItem("Bath").getDataBodyRange();
      column.dataValidation.load("rule");
      await context.sync();
      return column.dataValidation.rule;
    });
    const baths = host.workbook.tables.named("Baths");
    const first = (baths?.area.row ?? 0) + 2;
    const last = first + (baths?.area.rows ?? 0) - 2;
    expect(rule.list?.source).toBe(`='Baths'!$A$${String(first)}:$A$${String(last)}`);
  });

  test("cancelled half way is as it was, and can still be upgraded", async () => {
    await openEarlier();
    const before = everything();
    const stop = new AbortController();
    const steps: string[] = [];
    const upgrade = upgradeLog(plan, {
      signal: stop.signal,
      onProgress: ({ step, of, words }) => {
        steps.push(words);
        if (step > of / 2) stop.abort();
      },
    });
    await expect(upgrade).rejects.toBeInstanceOf(Cancelled);
    expect(steps.length).toBeGreaterThan(2);
    expect(everything()).toEqual(before);
    await upgradeLog(plan);
    expect((await log()).rows.readings).toHaveLength(10);
  });

  test("with a column renamed is refused by name, and nothing is changed", async () => {
    await openEarlier();
    const header = host.workbook.tables.named("Readings")?.headers.indexOf("pH as read") ?? -1;
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Readings").getHeaderRowRange().getCell(0, header).values = [["pee aitch"]];
      await context.sync();
    });
    const before = everything();
    const problem = await upgradeLog(plan).catch((error: unknown) => error);
    expect(problem).toBeInstanceOf(DamagedLog);
    expect((problem as DamagedLog).message).toMatch(/"pH as read" of table Readings.*"pee aitch".*Nothing was changed/);
    expect(everything()).toEqual(before);
  });

  test("with a protected sheet is left alone and the sheet is named", async () => {
    await openEarlier();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Additions").protection.protect();
      await context.sync();
    });
    const before = everything();
    await expect(upgradeLog(plan)).rejects.toThrow(/sheet Additions is protected, so nothing was changed/);
    expect(everything()).toEqual(before);
  });

  test("with notes beside a table that has to grow is left alone and says where they stand", async () => {
    await openEarlier();
    await Excel.run(async (context) => {
      const tanks = context.workbook.tables.getItem("Tanks");
      const range = tanks.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      const { rowIndex, columnIndex, rowCount, columnCount } = range;
      const sheet = context.workbook.worksheets.getItem("Job");
      sheet.getRangeByIndexes(rowIndex + 1, columnIndex + columnCount, 1, 1).values = [["mind the step"]];
      await context.sync();
      // The table takes in what is written beside it; a shop that does not want that undoes it.
      tanks.resize(sheet.getRangeByIndexes(rowIndex, columnIndex, rowCount, columnCount));
      await context.sync();
    });
    const before = everything();
    await expect(upgradeLog(plan)).rejects.toThrow(
      /Tanks needs more columns.*sheet Job are not blank.*Move what stands there/,
    );
    expect(everything()).toEqual(before);
  });
});

describe("a log of a later version", () => {
  test("is refused with words, for reading and for building", async () => {
    await openLog({ fields: {}, rows: {} });
    await Excel.run(async (context) => {
      context.workbook.names.getItem("Log.Version").getRange().values = [[jobLog.version + 1]];
      await context.sync();
    });
    await expect(readLog()).rejects.toBeInstanceOf(NewerLog);
    await expect(upgradeLog(plan)).rejects.toBeInstanceOf(NewerLog);
  });
});
