import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { beforeEach, describe, expect, test } from "vitest";

import type { Verdict } from "../../../../src/excel/check/excel-check.ts";
import { hostFacts } from "../../../../src/excel/check/host-facts.ts";
import { type CheckReport, reportText, summaryOf } from "../../../../src/excel/check/report.ts";
import { layReport } from "../../../../src/excel/check/report-sheet.ts";
import type { CheckResult } from "../../../../src/excel/check/run-checks.ts";
import { smallWorkbook } from "../../../../src/excel/check/small-workbook.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { hasOpenXmlValidator, validateFile } from "../../files/open-xml-validator.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { checkOf } from "./run-here.ts";

let host: Host;

beforeEach(() => {
  host = openWorkbook();
});

const result = (id: string, verdict: Verdict, seen: string): CheckResult => ({ check: checkOf(id), verdict, seen });

const reportOf = (results: readonly CheckResult[]): CheckReport => ({
  facts: hostFacts(),
  browser: "a browser",
  at: new Date("2026-11-29T14:30:59Z"),
  results,
});

describe("the report", () => {
  test("says which Excel answered and what, in plain text", () => {
    host.office.sets.set("ExcelApi", 1.17);
    expect(reportText(reportOf([result("date-system", "differs", "44889")]))).toBe(
      [
        "Excel check of Bathsheet, 2026-11-29 14:30 UTC",
        "Platform: OfficeOnline",
        "Version: 0",
        "Languages: en-US shown, en-US for editing",
        "API sets: ExcelApi 1.17, CustomFunctionsRuntime 1.3, SharedRuntime 1.1, File 1.1, CompressedFile 1.1",
        "Browser: a browser",
        "0 as expected, 1 differs, 0 could not be tried",
        "",
        "[differs] Which day is 1 (date-system)",
        "  Asked: =DATE(2026,11,25)",
        "  Expected: 46351, by days from 1900; a workbook with days from 1904 shows 44889",
        "  Seen: 44889",
      ].join("\n"),
    );
  });

  test("counts each kind of answer", () => {
    const results = [
      result("date-system", "ok", ""),
      result("one-page-wide", "differs", ""),
      result("startup-behavior", "differs", ""),
    ];
    expect(summaryOf(results)).toBe("1 as expected, 2 differ, 0 could not be tried");
  });

  test("lies on a sheet of its own as text, whatever it begins with", async () => {
    host.workbook.sheets.add("excel CHECK");
    expect(await layReport(reportOf([result("date-system", "differs", "=1+1")]))).toBe("Excel check 2");
    const rows = host.values("Excel check 2");
    expect(rows[6]?.[0]).toBe("0 as expected, 1 differs, 0 could not be tried");
    expect(rows.slice(8)).toEqual([
      ["Check", "Result", "Seen", "Expected", "Asked", "Id"],
      [
        "Which day is 1",
        "differs",
        "=1+1",
        "46351, by days from 1900; a workbook with days from 1904 shows 44889",
        "=DATE(2026,11,25)",
        "date-system",
      ],
    ]);
  });
});

test.skipIf(!hasOpenXmlValidator)(
  "the workbook that is inserted keeps to the file format [needs the Open XML validator]",
  async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "check-"));
    try {
      const file = path.join(folder, "small.xlsx");
      await writeFile(file, smallWorkbook({ sheet: "A & B", formula: 'LEFT("<&>",1)', value: 1 }));
      expect(await validateFile(file)).toEqual({ ok: true, errors: [] });
    } finally {
      await rm(folder, { recursive: true });
    }
  },
);
