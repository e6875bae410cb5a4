import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { afterEach, beforeAll, expect, test, vi } from "vitest";

import { openHandOffCopy, openPlainCopy } from "../../../src/excel/hand-off.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import { handsFileOver, openFile } from "../../../src/excel/open-file.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { hasOpenXmlValidator, validateFile } from "../files/open-xml-validator.ts";
import { partsOf } from "../files/read-parts.ts";
import { openWorkbook } from "./log/open-workbook.ts";

type PageGlobals = Pick<typeof globalThis, "XMLSerializer" | "DOMParser" | "document">;

/** The package comes without types. */
const { JSDOM } = createRequire(import.meta.url)("jsdom") as {
  readonly JSDOM: new () => { readonly window: PageGlobals };
};

afterEach(() => {
  vi.restoreAllMocks();
});

let file: Uint8Array;
let copyOfFile: Uint8Array;
let isHandedOver: boolean;

beforeAll(async () => {
  const { window } = new JSDOM();
  // The grid's export asks the page for these.
  Object.assign(globalThis, {
    XMLSerializer: window.XMLSerializer,
    DOMParser: window.DOMParser,
    document: window.document,
  });
  const host = openWorkbook();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.getRange("A1:B1").formulas = [["=6*7", '=BATH.STRENGTH("1+39")']];
    await context.sync();
  });
  const opened: Uint8Array[] = [];
  host.session.openNew = (copy) => {
    opened.push(copy);
  };
  await openHandOffCopy();
  const whole = await openFile();
  host.office.sets.delete("CompressedFile");
  isHandedOver = handsFileOver();
  await openHandOffCopy(whole);
  const [copy, ofFile] = opened;
  if (copy === undefined || ofFile === undefined) throw new Error("nothing was opened");
  file = copy;
  copyOfFile = ofFile;
});

test("where Excel does not hand files over, it is known beforehand, and a downloaded file gives the same copy", () => {
  expect(isHandedOver).toBe(false);
  expect([...partsOf(copyOfFile)]).toEqual([...partsOf(file)]);
});

test("a file that is no workbook is refused in words", async () => {
  await expect(openHandOffCopy(new Uint8Array([1, 2, 3]))).rejects.toMatchObject({
    what: "The workbook could not be read as an .xlsx file.",
  });
});

test("the copy that opens holds the figures and no formula", () => {
  const sheet = [...partsOf(file)].find(([name]) => name.startsWith("xl/worksheets/"))?.[1] ?? "";
  expect(sheet).toContain("<v>42</v>");
  expect(sheet).toContain("<v>0.025</v>");
  expect(sheet).not.toMatch(/<f[ >]/);
});

test("sheets of values open as a workbook of their own, and where Excel fails, it says so", async () => {
  const host = openWorkbook();
  const opened: Uint8Array[] = [];
  host.session.openNew = (copy) => {
    opened.push(copy);
  };
  const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} }).sheets.find(({ id }) => id === "notes");
  if (plan === undefined) throw new Error("The log has no sheet of notes.");
  const cells = plan.cells.filter(({ kind }) => kind === "value");
  await openPlainCopy([{ ...plan, cells }]);
  const [copy] = opened;
  expect(partsOf(copy ?? new Uint8Array()).get("xl/sharedStrings.xml")).toContain("Notes");
  host.session.openNew = () => {
    throw Object.assign(new Error("The request failed."), { code: "GeneralException" });
  };
  await expect(openPlainCopy([{ ...plan, cells }])).rejects.toBeInstanceOf(LogProblem);
});

test.skipIf(!hasOpenXmlValidator)(
  "the copy that opens passes the Open XML validator [needs the Open XML validator]",
  async () => {
    const folder = await mkdtemp(join(tmpdir(), "hand-off-"));
    await writeFile(join(folder, "copy.xlsx"), file);
    const result = await validateFile(join(folder, "copy.xlsx"));
    await rm(folder, { recursive: true });
    expect(result.errors).toEqual([]);
  },
);

test.each(["file", "copy"] as const)(
  "where Excel fails at the %s, it says so, and the workbook is as it was",
  async (part) => {
    const host = openWorkbook();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1").formulas = [["=6*7"]];
      await context.sync();
    });
    const before = host.save();
    const fails = (): never => {
      throw Object.assign(new Error("The request failed."), { code: "GeneralException" });
    };
    if (part === "copy") host.session.openNew = fails;
    else
      vi.spyOn(Office.context.document, "getFileAsync").mockImplementation((...given: readonly unknown[]) => {
        const answer = given.at(-1) as (result: unknown) => void;
        answer({ status: "failed", error: { code: 5001, name: "InternalError", message: "The request failed." } });
      });
    await expect(openHandOffCopy()).rejects.toBeInstanceOf(LogProblem);
    expect(host.save()).toEqual(before);
  },
);
