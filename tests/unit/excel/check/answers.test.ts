/** What the checks find in the stand-in, by its own objects and through Microsoft's object model. */
import { createRequire } from "node:module";

import { afterEach, beforeEach, describe, expect, test } from "vitest";

import { excelChecks } from "../../../../src/excel/check/checks.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { judgeOfThisFile } from "../judge/judged-excel.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { answerOf } from "./run-here.ts";

type PageGlobals = Pick<typeof globalThis, "XMLSerializer" | "DOMParser" | "document">;

/** The package comes without types. */
const { JSDOM } = createRequire(import.meta.url)("jsdom") as {
  readonly JSDOM: new () => { readonly window: PageGlobals };
};

/** Builds a log, which takes the grid half a minute here; the browser test of the page runs it. */
const inBrowserOnly = ["whole-log"];

const full = "=BathCheckWords[[#This Row],[pH as read]]*2";

const column = "ok: =A2*2, =A3*2, =A4*2, =A5*2, =A6*2";

const noStandIn = (member: string): string =>
  `could not be tried: The workbench's stand-in for Excel has no ${member}. Add it to src/workbench/host, or do without.`;

/** Events pass through no request, so the second judge has none. */
const noEvents = "could not be tried: Cannot read properties of undefined (reading 'register')";

const isObjectModel = judgeOfThisFile() !== "stand-in";

const answers: Readonly<Record<string, string>> = {
  "one-formula-for-a-column": column,
  "formula-copied-down": column,
  "one-number-format-for-a-column": 'ok: ["0.00", "0.00", "0.00", "0.00", "0.00"]',
  "this-row-in-full": `ok: ${full}, value 20`,
  "this-row-in-short": "ok: =[@[pH as read]]*2, value 20",
  "validation-of-grown-rows": "ok: List",
  "number-format-of-grown-rows": 'ok: "0.00"',
  "formula-of-grown-rows": 'ok: "=BathCheckGrown[[#This Row],[pH as read]]*2"',
  "value-among-formulas":
    'ok: 19, "=BathCheckGrown[[#This Row],[pH as read]]*2", "=BathCheckGrown[[#This Row],[pH as read]]*2"',
  "conditional-format-of-grown-rows": "ok: 1 in the column, 1 at its last cell",
  "conditional-format-of-copied-looks": "ok: 1 in the column, 1 at its last cell",
  "blank-argument": 'ok: received null, shows "#VALUE!"',
  "omitted-argument": "ok: received null, shows 1",
  "blank-in-a-range": "ok: received [[1], [null], [1]], shows 50",
  "error-argument": 'ok: not called, shows "#N/A"',
  "values-after-a-new-formula": "ok: 1 after … ms",
  "values-after-a-changed-cell": "ok: 2 after … ms",
  "calls-after-one-edit": "ok: 0 for the note, 1 for the volume; 30 when the table was written",
  "changed-events": isObjectModel
    ? noEvents
    : "ok: value: A1 after … ms; formula: B1 after … ms; BATH formula: C1 after … ms; value that changes both formulas: A1 after … ms; number format: none",
  "calculated-events": isObjectModel
    ? noEvents
    : "ok: value: none; formula: none; BATH formula: after … ms; value that changes both formulas: after … ms and after … ms; number format: after … ms",
  "stored-function-when-inserted": noStandIn("Workbook.insertWorksheetsFromBase64"),
  "stored-function-when-saved": "could not be tried: The file holds no such formula.",
  "chart-of-scatter": "ok: Reading, Trigger, Forecast",
  "chart-of-bars": "ok: Baskets",
  "write-to-a-protected-sheet":
    "ok: AccessDenied: You cannot perform the requested operation. Sheet Bathsheet check 1 is protected. The person reads: Excel refused the entry: a sheet of the log is protected or the workbook may not be changed.",
  "sheet-in-a-protected-workbook":
    "ok: AccessDenied: The workbook's structure is protected. The person reads: The structure of this workbook is protected, so no sheet can be added to it. Nothing was changed.",
  "filter-state-without-buttons": "ok: refused: GeneralException",
  "null-object-of-a-missing-column": "ok: missing: a null object, blank: a null object",
  "one-page-wide": "ok: horizontalFitToPages 1, scale undefined",
  "date-system": "ok: 46351",
  "startup-behavior": "ok: Load, before None",
};

let host: Host;

beforeEach(() => {
  const { window } = new JSDOM();
  // The grid's export asks the page for these.
  Object.assign(globalThis, {
    XMLSerializer: window.XMLSerializer,
    DOMParser: window.DOMParser,
    document: window.document,
  });
  host = openWorkbook();
});

/** Whatever a check does, the workbook is then as it was. */
afterEach(() => {
  const { sheets, tables, structureLocked } = host.workbook;
  expect(sheets.ids().map((sheet) => [sheets.nameOf(sheet), host.values(sheets.nameOf(sheet))])).toEqual([
    ["Sheet1", []],
  ]);
  expect(tables.list()).toEqual([]);
  expect(structureLocked).toBe(false);
  expect(host.office.startup).toBe("None");
});

describe("in the workbench", () => {
  test.each(Object.entries(answers))("%s", async (id, answer) => {
    expect(await answerOf(id)).toBe(answer);
  });

  test("file-handed-over", async () => {
    expect(await answerOf("file-handed-over")).toMatch(/^ok: offered; \d+ bytes after … ms$/);
  });

  test("every check is answered here or in the browser", () => {
    expect([...Object.keys(answers), "file-handed-over", ...inBrowserOnly].toSorted()).toEqual(
      excelChecks.map(({ id }) => id).toSorted(),
    );
  });
});

describe("in another Excel", () => {
  test("that refuses one value for a range", async () => {
    host.workbook.habits.oneValue = "is refused";
    expect(await answerOf("one-formula-for-a-column")).toMatch(/^differs: Excel refused \(InvalidArgument\): /);
    expect(await answerOf("formula-copied-down")).toBe(column);
  });

  test("that fills the first cell alone", async () => {
    host.workbook.habits.oneValue = "fills the first cell";
    expect(await answerOf("one-formula-for-a-column")).toBe("differs: =A2*2, , , , ");
    expect(await answerOf("one-number-format-for-a-column")).toMatch(/^differs: \["0.00", "General"/);
  });

  test("that does not dress the rows that a table gains", async () => {
    host.workbook.habits.resizingDressesRows = false;
    expect(await answerOf("validation-of-grown-rows")).toBe("differs: None");
    expect(await answerOf("number-format-of-grown-rows")).toBe('differs: "General"');
    expect(await answerOf("conditional-format-of-grown-rows")).toBe("differs: 1 in the column, 0 at its last cell");
  });

  test("that offers no file but hands one over", async () => {
    host.office.sets.delete("CompressedFile");
    expect(await answerOf("file-handed-over")).toMatch(/^differs: not offered; \d+ bytes/);
  });

  test("without a shared runtime", async () => {
    host.office.sets.delete("SharedRuntime");
    expect(await answerOf("startup-behavior")).toBe("could not be tried: This Excel has no shared runtime.");
  });

  test("where the structure is protected already, and stays so", async () => {
    host.workbook.structureLocked = true;
    expect(await answerOf("date-system")).toMatch(/^differs: Excel refused \(AccessDenied\)/);
    expect(host.workbook.structureLocked).toBe(true);
    host.workbook.structureLocked = false;
  });

  test("where a log or a name of the log stands, that stays", async () => {
    await Excel.run(async (context) => {
      context.workbook.names.add("unit.system", context.workbook.worksheets.getItem("Sheet1").getRange("A1"));
      await context.sync();
    });
    expect(await answerOf("whole-log")).toBe(
      "could not be tried: This workbook has the name Unit.System. Run the check in a new workbook.",
    );
    expect(host.workbook.names.list()).toEqual(["unit.system"]);
  });
});
