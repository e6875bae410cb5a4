import { beforeEach, describe, expect, test, vi } from "vitest";

import { CallRecord } from "../../../../src/excel/check/call-record.ts";
import { type ExcelCheck, finding, NotTried } from "../../../../src/excel/check/excel-check.ts";
import { neverAnother, timeLine, watchCell } from "../../../../src/excel/check/settled-value.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { ExcelError } from "../../../../src/workbench/host/excel-error.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { checkOf, runHere } from "./run-here.ts";

let host: Host;

beforeEach(() => {
  host = openWorkbook();
});

const sheetNames = (): readonly string[] =>
  host.workbook.sheets.ids().map((sheet) => host.workbook.sheets.nameOf(sheet));

function check(id: string, run: ExcelCheck["run"], patience?: number): ExcelCheck {
  return { id, title: id, asks: "", expected: "", run, ...(patience === undefined ? {} : { patience }) };
}

describe("running checks", () => {
  test("an error of Excel is a finding, what is lacking is none, and neither ends the run", async () => {
    const { results } = await runHere([
      check("refused", () => Promise.reject(new ExcelError("InvalidArgument", "Not so."))),
      check("lacking", () => Promise.reject(new ExcelError("NotImplemented", "Not here."))),
      check("own", () => Promise.reject(new NotTried("No paper."))),
      check("fault", () => Promise.reject(new TypeError("x is not a function"))),
      check("silent", () => new Promise(() => undefined), 20),
      check("last", () => Promise.resolve(finding(true, "1"))),
    ]);
    expect(results.map(({ verdict, seen }) => [verdict, seen])).toEqual([
      ["differs", "Excel refused (InvalidArgument): Not so."],
      ["could not be tried", "Excel refused (NotImplemented): Not here."],
      ["could not be tried", "No paper."],
      ["could not be tried", "x is not a function"],
      ["could not be tried", "No answer within 0.02 s."],
      ["ok", "1"],
    ]);
  });

  test("a person's sheets stay, one of like name too, and no name is taken twice", async () => {
    host.workbook.sheets.add("Bathsheet check 7");
    const names: string[] = [];
    await runHere([
      check("names", async ({ context, sheet }) => {
        sheet.load("name");
        context.workbook.worksheets.add("Bathsheet check file");
        await context.sync();
        names.push(sheet.name);
        return finding(true, "");
      }),
    ]);
    expect(names).toEqual(["Bathsheet check 8"]);
    expect(sheetNames()).toEqual(["Sheet1", "Bathsheet check 7"]);
  });

  test("a sheet that Excel does not delete is named, and no result is lost", async () => {
    const warned = vi.spyOn(console, "warn").mockImplementation(() => undefined);
    const { results, left } = await runHere([
      check("locks", async ({ context, sheet }) => {
        sheet.protection.protect();
        await context.sync();
        return finding(true, "locked");
      }),
    ]);
    expect(results.map(({ seen }) => seen)).toEqual(["locked"]);
    expect(warned).toHaveBeenCalledOnce();
    warned.mockRestore();
    expect(left).toEqual(["Bathsheet check 1"]);
  });

  test("where another add-in answers the functions, what hangs on their calls could not be tried", async () => {
    const ids = ["blank-argument", "omitted-argument", "blank-in-a-range", "calls-after-one-edit"];
    const { results } = await runHere(ids.map(checkOf), new CallRecord());
    expect(results.map(({ verdict }) => verdict)).toEqual(ids.map(() => "could not be tried"));
    expect(results[0]?.seen).toContain("no call came to this page");
  });
});

describe("a cell that is watched", () => {
  const watched = (shown: readonly unknown[]): ReturnType<typeof watchCell> => {
    let at = -1;
    const cell = {
      load: () => undefined,
      get values() {
        return [[shown[Math.min(at, shown.length - 1)]]];
      },
    };
    const sync = (): Promise<void> => {
      at += 1;
      return Promise.resolve();
    };
    return watchCell({ context: { sync }, cell, pause: () => Promise.resolve() }, () => false);
  };

  test.each([
    [["#BUSY!", "#BUSY!", 2], true, /^"#BUSY!" after \d+ ms, then 2 after \d+ ms$/],
    [[1, 2], false, /^1 after \d+ ms, then 2 after \d+ ms$/],
    [[0, 2], false, /^0 after/],
    [["#BUSY!"], false, /^"#BUSY!" after \d+ ms$/],
    [["#VALUE!", 2], false, /^"#VALUE!" after/],
  ] as const)("shows %j", async (shown, asHoped, line) => {
    const seen = await watched(shown);
    expect(neverAnother(seen, 2)).toBe(asHoped);
    expect(timeLine(seen)).toMatch(line);
  });
});
