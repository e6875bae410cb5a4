/**
 * Where Excel's documents leave something open, each answer that it may give leaves the log whole.
 *
 * @module-tag landing
 */
import { beforeEach, describe, expect, test } from "vitest";

import { RangeFiller } from "../../../src/excel/build/range-filler.ts";
import { buildLog, editLog, readLog, repairFormulas, upgradeLog } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { ExcelError } from "../../../src/workbench/host/excel-error.ts";
import type { Habits } from "../../../src/workbench/host/workbook/habits.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { openLog } from "./log/prepared-log.ts";

const plan = layOut(jobLog, { system: "US" }, firstTwoDays);

const nothingTyped = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

const answers: readonly Habits["oneValue"][] = ["fills every cell", "fills the first cell", "is refused"];

describe.each(answers)("one value that is set on a range %s", (oneValue) => {
  test("all cells of a column get their formula and number format", async () => {
    openWorkbook().workbook.habits.oneValue = oneValue;
    const area = { row: 0, column: 1, rows: 4, columns: 1 };
    const cells = await Excel.run(async (context) => {
      const worksheet = context.workbook.worksheets.getActiveWorksheet();
      worksheet.getRange("A1:A4").values = [[3], [4], [5], [6]];
      const filler = new RangeFiller(context);
      await filler.tryOneValue({ worksheet, area, formula: "=ROW($A$1)", numberFormat: "0.0" });
      filler.formulas(worksheet, area, "=SUM($A$1:$A$4)");
      filler.numberFormat(worksheet, area, "0.00");
      await context.sync();
      await filler.mend();
      const range = worksheet.getRange("B1:B4").load("values,numberFormat");
      await context.sync();
      return { values: range.values, formats: range.numberFormat };
    });
    expect(cells).toEqual({ values: [[18], [18], [18], [18]], formats: [["0.00"], ["0.00"], ["0.00"], ["0.00"]] });
  });

  test("a column that did not take its formula, though one before it did, is filled by copies", async () => {
    const host = openWorkbook();
    const area = { row: 0, column: 1, rows: 3, columns: 1 };
    const values = await Excel.run(async (context) => {
      const worksheet = context.workbook.worksheets.getActiveWorksheet();
      const filler = new RangeFiller(context);
      await filler.tryOneValue({ worksheet, area, formula: "=1+1", numberFormat: "0.0" });
      if (oneValue === "fills the first cell") host.workbook.habits.oneValue = oneValue;
      filler.formulas(worksheet, { ...area, column: 2 }, "=2+2");
      await context.sync();
      await filler.mend();
      const range = worksheet.getRange("C1:C3").load("values");
      await context.sync();
      return range.values;
    });
    expect(values).toEqual([[4], [4], [4]]);
  });
});

describe("where one value is refused", () => {
  test("a log is built and repaired as it is elsewhere", async () => {
    await openLog(firstTwoDays);
    const usual = await readLog();
    const host = openWorkbook();
    host.workbook.habits.oneValue = "is refused";
    await buildLog(plan);
    expect(await readLog()).toEqual(usual);
    await Excel.run(async (context) => {
      const column = context.workbook.tables.getItem("Readings").columns.getItem("Verdict").getDataBodyRange();
      column.load("rowCount");
      await context.sync();
      column.formulas = Array.from({ length: column.rowCount }, () => ["=_xldudf_BATH_VERDICT(1,2)"]);
      await context.sync();
    });
    expect((await readLog())?.rows.readings[0]?.cells.verdict).toBe("#NAME?");
    await repairFormulas(nothingTyped);
    expect(await readLog()).toEqual(usual);
  });
});

describe("rows that a table gains by resizing", () => {
  const reading = { id: "R011", bath: "B-T1-0301", when: 46449.302083, purpose: "check", ph: 10.83, temperature: 77 };

  let host: Host;

  /** Each cell of the readings' row that is so far from the last. */
  function cellsOf(
    fromLast: number,
  ): readonly { readonly sheet: string; readonly row: number; readonly column: number }[] {
    const table = host.workbook.tables.named("Readings");
    if (table === undefined) throw new Error("no readings");
    const { sheet, row, rows, column, columns } = table.area;
    return Array.from({ length: columns }, (_, index) => ({
      sheet,
      row: row + rows - 1 - fromLast,
      column: column + index,
    }));
  }

  const rulesOf = (fromLast: number): readonly unknown[] =>
    cellsOf(fromLast).map((cell) => host.workbook.validations.wordsAt(cell));

  const fillsOf = (fromLast: number): readonly unknown[] =>
    cellsOf(fromLast).map(
      ({ sheet, row, column }) => host.model.getters.getCellStyle({ sheetId: sheet, row, col: column }).fillColor,
    );

  /** The rules over the readings' last row, and how many rules the sheet has in all. */
  function rules(): { readonly onLastRow: readonly unknown[]; readonly count: number } {
    const sheet = cellsOf(0)[0]?.sheet ?? "";
    return { onLastRow: rulesOf(0), count: host.model.getters.getDataValidationRules(sheet).length };
  }

  async function lastFormats(): Promise<unknown> {
    return Excel.run(async (context) => {
      const row = context.workbook.tables.getItem("Readings").getDataBodyRange().getLastRow().load("numberFormat");
      await context.sync();
      return row.numberFormat;
    });
  }

  beforeEach(async () => {
    host = await openLog(firstTwoDays);
  });

  test.each([true, false])(
    "have lists, limits and looks, each column by one rule; Excel dresses them itself: %s",
    async (resizingDressesRows) => {
      host.workbook.habits.resizingDressesRows = resizingDressesRows;
      const [before, formats] = [rules(), await lastFormats()];
      expect(before.onLastRow.filter((rule) => rule !== undefined).length).toBeGreaterThan(5);
      await editLog({ rows: [{ table: "readings", row: reading }] });
      await editLog({ rows: [{ table: "readings", row: { ...reading, id: "R012" } }] });
      expect((await readLog())?.rows.readings.at(-1)?.cells.id).toBe("R012");
      expect(rules()).toEqual(before);
      expect(await lastFormats()).toEqual(formats);
    },
  );

  test.each([true, false])(
    "keep them on each of three that come at once; Excel dresses them itself: %s",
    async (resizingDressesRows) => {
      host.workbook.habits.resizingDressesRows = resizingDressesRows;
      const [ruled, filled] = [rulesOf(0), fillsOf(0)];
      expect(filled.filter((fill) => fill !== undefined).length).toBeGreaterThan(5);
      const ids = ["R011", "R012", "R013"];
      await editLog({ rows: ids.map((id) => ({ table: "readings", row: { ...reading, id } })) });
      expect((await readLog())?.rows.readings.slice(-3).map(({ cells }) => cells.id)).toEqual(ids);
      for (const fromLast of [0, 1, 2]) {
        expect(rulesOf(fromLast)).toEqual(ruled);
        expect(fillsOf(fromLast)).toEqual(filled);
      }
    },
  );
});

describe("where Excel stops", () => {
  const reading = { id: "R011", bath: "B-T1-0301", when: 46449.302083, purpose: "check", ph: 10.83 };

  /** The remedy that a person reads when Excel refuses the trip of this number, and all after it where it stays away. */
  async function remedyAt(trip: number, work: () => Promise<unknown>, staysAway = false): Promise<unknown> {
    const host = await openLog(firstTwoDays);
    let count = 0;
    host.session.refusal = () => {
      count += 1;
      return count === trip || (staysAway && count > trip) ? new ExcelError("GeneralException", "Stopped.") : undefined;
    };
    const failure: unknown = await work().catch((error: unknown) => error);
    return failure instanceof LogProblem ? failure.remedy : failure;
  }

  test("only an entry whose rows were on their way, and could not be looked for, sends a person to the log", async () => {
    const entry = (): Promise<unknown> => editLog({ rows: [{ table: "readings", row: reading }] });
    expect(await remedyAt(1, entry)).toBe("Nothing was written. Try again.");
    expect(await remedyAt(2, entry)).toBe("Nothing was written. Try again.");
    expect(await remedyAt(2, entry, true)).toMatch(
      /^Part of this may be in the log all the same: look at the sheet Readings/,
    );
    expect(await remedyAt(1, entry, true)).toBe("Nothing was written. Try again.");
    expect(await remedyAt(1, readLog)).toBe("Nothing was written. Try again.");
    expect(await remedyAt(3, () => repairFormulas(nothingTyped))).toBe("Nothing was written. Try again.");
  });
});

describe("what the workbook lets the add-in do", () => {
  test("where its structure is protected, the build says which lock it is and changes nothing", async () => {
    const host = openWorkbook();
    const before = host.workbook.sheets.ids();
    await Excel.run(async (context) => {
      context.workbook.protection.protect();
      await context.sync();
    });
    await expect(buildLog(nothingTyped)).rejects.toMatchObject({
      what: expect.stringMatching(/structure of this workbook is protected.*Nothing was changed/) as string,
      remedy: expect.stringMatching(/Review, Protect Workbook/) as string,
    });
    expect(host.workbook.sheets.ids()).toEqual(before);
  });

  test("a log that is there already is repaired under that lock", async () => {
    await openLog(firstTwoDays);
    await Excel.run(async (context) => {
      context.workbook.protection.protect();
      await context.sync();
    });
    await expect(repairFormulas(nothingTyped)).resolves.toMatchObject({ added: [] });
  });

  test("the add-in starts with a workbook that it built, upgraded or repaired a log in, where Excel can do that", async () => {
    const host = await openLog(firstTwoDays);
    for (const work of [buildLog, upgradeLog, repairFormulas]) {
      host.office.startup = "None";
      await work(nothingTyped);
      expect(host.office.startup).toBe("Load");
    }
    host.office.startup = "None";
    host.office.sets.delete("SharedRuntime");
    await buildLog(nothingTyped);
    expect(host.office.startup).toBe("None");
  });
});
