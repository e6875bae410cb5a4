import { beforeEach, describe, expect, test } from "vitest";

import { buildLog, editLog, insertFormula, readLog } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { openLog } from "./log/prepared-log.ts";

const bath = "B-T1-0301";

let host: Host;

beforeEach(() => {
  host = openWorkbook();
});

function build(content: LogContent = firstTwoDays): ReturnType<typeof buildLog> {
  return buildLog(layOut(jobLog, { system: "US" }, content));
}

/** What follows a build needs no building: the log as a shop opens it. */
async function open(content: LogContent = firstTwoDays): Promise<void> {
  host = await openLog(content);
}

async function log(): Promise<LogSnapshot> {
  const snapshot = await readLog();
  if (snapshot === undefined) throw new Error("no log");
  return snapshot;
}

async function sheetNames(): Promise<readonly string[]> {
  return Excel.run(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    return sheets.items.map((sheet) => sheet.name);
  });
}

describe("building the log", () => {
  test("a workbook without a log says so", async () => {
    expect(await readLog()).toBeUndefined();
  });

  // Working volume, dose at 1+28, baseline and trigger as published with the invented demo week's own answers.
  test("adds one sheet for every sheet of the plan, reads back what was laid out, and the formulas work it out", async () => {
    const report = await build();
    expect(report.added).toEqual(jobLog.sheets.map((sheet) => sheet.name));
    const planned = layOut(jobLog, { system: "US" }, firstTwoDays).sheets;
    const groups = new Map(host.save().sheets.map(({ name, columnGroups = [] }) => [name, columnGroups]));
    for (const { name, folded = [] } of planned)
      expect(groups.get(name), name).toEqual(folded.map((run) => ({ ...run, folded: true })));
    const { rows, fields } = await log();
    expect(fields.shop).toBe(firstTwoDays.fields.shop);
    expect(rows.readings.map((row) => row.cells.id)).toEqual(firstTwoDays.rows.readings?.map((row) => row["id"]));
    const [row] = rows.baths;
    expect(row?.cells.strength).toBe("1+28");
    expect(row?.cells.workingVolume).toBeCloseTo(121.175, 3);
    expect(row?.cells.baseDose).toBeCloseTo(4.178, 3);
    expect(row?.cells.baseline).toBeCloseTo(11.42, 10);
    expect(row?.cells.trigger).toBeCloseTo(10.92, 10);
    expect(row?.cells.benchState).toBe("accepted");
  });

  test("building again keeps every sheet and every row", { tags: "landing" }, async () => {
    await open();
    const before = await log();
    const again = await build({ fields: {}, rows: {} });
    expect(again.added).toEqual([]);
    expect(again.kept).toHaveLength(jobLog.sheets.length);
    expect(await log()).toEqual(before);
  });

  test(
    "a shop's own sheet of the same name is left alone and the log's sheet takes another name",
    { tags: "landing" },
    async () => {
      await Excel.run(async (context) => {
        context.workbook.worksheets.add("Readings").getRange("A1:A1").values = [["my own notes"]];
        await context.sync();
      });
      const report = await build();
      expect(report.renamed).toEqual([{ planned: "Readings", actual: "Readings (log)" }]);
      expect(host.values("Readings")).toEqual([["my own notes"]]);
      const [row] = (await log()).rows.baths;
      expect(row?.cells.baseline).toBeCloseTo(11.42, 10);
    },
  );

  test("a shop's own table of the same name is no log; the build names it, says what to do and changes nothing", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange("A1:B2").values = [
        ["Reading", "Who"],
        ["meter 4711", "Ann"],
      ];
      sheet.tables.add("A1:B2", true).name = "Readings";
      await context.sync();
    });
    const before = await sheetNames();
    expect(await readLog()).toBeUndefined();
    await expect(build()).rejects.toThrow(/table of its own named Readings.*another name/);
    expect(await sheetNames()).toEqual(before);
    expect(await readLog()).toBeUndefined();
  });
});

describe("a damaged log", () => {
  test("a renamed column is named, with what to do", async () => {
    await open();
    await Excel.run(async (context) => {
      const header = context.workbook.tables.getItem("Readings").getHeaderRowRange();
      header.load("values");
      await context.sync();
      header.values = [(header.values[0] ?? []).map((text: unknown) => (text === "pH as read" ? "pee aitch" : text))];
      await context.sync();
    });
    await expect(readLog()).rejects.toThrow(/column "pH as read" of table Readings .* missing or renamed/);
  });

  test("a renamed table is named", async () => {
    await open();
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Additions").name = "MyAdditions";
      await context.sync();
    });
    const failure = await readLog().catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(LogProblem);
    expect((failure as LogProblem).what).toMatch(/table Additions .* missing or renamed/);
    expect((failure as LogProblem).remedy).toMatch(/Undo/);
  });
});

describe("adding rows", () => {
  const reading = { id: "R011", bath, when: 46449.302083, purpose: "check", ph: 10.83, temperature: 77 };

  test("the first row goes into the blank line that an empty table starts with", async () => {
    await open({ ...firstTwoDays, rows: { ...firstTwoDays.rows, readings: [] } });
    await editLog({ rows: [{ table: "readings", row: { ...reading, id: "R001" } }] });
    const { rows } = await log();
    expect(rows.readings.map(({ position, cells }) => [position, cells.id])).toEqual([[0, "R001"]]);
  });

  test("a further row goes beneath, the table grows, and its calculated columns answer", async () => {
    await open();
    await editLog({ rows: [{ table: "readings", row: reading }] });
    const { rows } = await log();
    const last = rows.readings.at(-1);
    expect(last?.cells).toMatchObject({ id: "R011", ph: 10.83, purpose: "check", verdict: "top up" });
    expect(rows.baths[0]?.cells.state).toBe("top up");
    expect(last?.cells.firstAddition).toBeCloseTo(4.178 / 3, 2);
  });

  test("several tables are written together and rows keep their order", async () => {
    await open();
    await editLog({
      rows: [
        {
          table: "additions",
          row: {
            id: "A005",
            bath,
            when: 46449.33,
            kind: "concentrate",
            purpose: "top-up",
            amount: 1.39,
            account: "claims",
          },
        },
        { table: "readings", row: reading },
        { table: "readings", row: { ...reading, id: "R012", purpose: "after top-up", ph: 11.13 } },
      ],
    });
    const { rows } = await log();
    expect(rows.readings.slice(-2).map((row) => row.cells.id)).toEqual(["R011", "R012"]);
    expect(rows.baths[0]?.cells.topUpTotal).toBeCloseTo(1.39, 10);
  });

  test("text that looks like a formula or a number stays the text that was typed", async () => {
    await open();
    await editLog({ rows: [{ table: "readings", row: { ...reading, note: "=1+1", meter: "007" } }] });
    const last = (await log()).rows.readings.at(-1);
    expect(last?.cells.note).toBe("=1+1");
    expect(last?.cells.meter).toBe("007");
  });

  const topUp = {
    id: "A005",
    bath,
    when: 46449.33,
    kind: "concentrate",
    purpose: "top-up",
    amount: 1.39,
    account: "claims",
  };

  test("a blank cell of an earlier row is filled in together with the new row", async () => {
    await open();
    await editLog({ rows: [{ table: "additions", row: topUp }] });
    await editLog({
      rows: [{ table: "readings", row: reading }],
      fills: [{ table: "additions", key: "A005", cells: { phAfter: 11.13 } }],
    });
    const addition = (await log()).rows.additions.at(-1);
    expect(addition?.cells).toMatchObject({ id: "A005", phAfter: 11.13, amount: 1.39, recovery: "short" });
  });

  test("where the cell to fill holds something else by now, or its row is gone, nothing is written and it says so", async () => {
    await open();
    await editLog({ rows: [{ table: "additions", row: { ...topUp, phAfter: 11.2 } }] });
    const before = await log();
    for (const key of ["A005", "A099"]) {
      const attempt = editLog({
        rows: [{ table: "readings", row: reading }],
        fills: [{ table: "additions", key, cells: { phAfter: 11.13 } }],
      });
      await expect(attempt).rejects.toMatchObject({
        what: expect.stringMatching(new RegExp(`row ${key} of table Additions .* Nothing was written`)) as string,
      });
    }
    expect(await log()).toEqual(before);
  });

  test("cells under a full table are never overwritten", async () => {
    await open();
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Readings").getDataBodyRange().getRowsBelow(2).getCell(1, 0).values = [
        ["do not touch"],
      ];
      await context.sync();
    });
    const before = await log();
    const two = ["R011", "R012"].map((id) => ({ table: "readings" as const, row: { ...reading, id } }));
    await expect(editLog({ rows: two })).rejects.toThrow(/Readings is full/);
    expect(await log()).toEqual(before);
  });

  test("a table of the Job sheet that has no room left says which row to make room at, and nothing is half written", async () => {
    const plan = layOut(jobLog, { system: "US" }, firstTwoDays);
    const claims = plan.sheets.find((sheet) => sheet.id === "job")?.tables.find((table) => table.id === "claims");
    await open();
    const before = await log();
    // Three of six rows are taken and three blank sheet rows follow: seven more claims are one too many.
    const seven = Array.from({ length: 7 }, (_, index) => ({
      table: "claims" as const,
      row: { claim: `D-05${String(index)}` },
    }));
    const failure = await editLog({ rows: seven }).catch((error: unknown) => error);
    expect((failure as LogProblem).what).toMatch(/^The table Claims is full, .* sheet Job .* Nothing was written\.$/);
    const firstBelow = (claims?.area.row ?? 0) + (claims?.area.rows ?? 0) + 1;
    expect((failure as LogProblem).remedy).toContain(`right-click row number ${String(firstBelow)}, choose Insert`);
    expect(await log()).toEqual(before);
    await editLog({ rows: seven.slice(1) });
    expect((await log()).rows.claims).toHaveLength(9);
  });
});

describe("a workbook that may not be changed", () => {
  test("a cell being edited refuses the entry and says what to press", async () => {
    await open();
    host.session.isCellBeingEdited = () => true;
    const failure = await editLog({ rows: [{ table: "readings", row: { id: "R011", bath } }] }).catch(
      (error: unknown) => error,
    );
    host.session.isCellBeingEdited = () => false;
    expect(failure).toBeInstanceOf(LogProblem);
    expect((failure as LogProblem).remedy).toMatch(/Enter or Esc/);
    expect((await log()).rows.readings).toHaveLength(10);
  });
});

describe("a protected sheet", () => {
  test("is named, and no other table of the same entry is written either", async () => {
    await open();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Readings").protection.protect();
      await context.sync();
    });
    const before = await log();
    const entry = editLog({
      rows: [
        {
          table: "additions",
          row: { id: "A005", bath, when: 46449.33, kind: "water", purpose: "make-up", amount: 2, account: "claims" },
        },
        { table: "readings", row: { id: "R011", bath, when: 46449.34, purpose: "check", ph: 11.2, temperature: 77 } },
      ],
    });
    await expect(entry).rejects.toThrow(/sheet Readings is protected, so nothing was written.*Unprotect/);
    expect(await log()).toEqual(before);
  });
});

describe("putting a formula in the sheet", () => {
  test("writes the formula in the selected cell and computes it", async () => {
    const address = await insertFormula('=BATH.STRENGTH("1+39")');
    expect(address).toMatch(/A1$/);
    const [name = ""] = await sheetNames();
    expect(host.values(name)[0]?.[0]).toBeCloseTo(0.025, 12);
  });

  test("refuses a cell that holds something", async () => {
    await insertFormula("=1+1");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1:A1").select();
      await context.sync();
    });
    await expect(insertFormula("=2+2")).rejects.toThrow(/already holds something/);
  });
});
