/** The checks as data, run over each judge's Excel. */
import { test } from "vitest";

import { recordCalls } from "../../../../src/excel/check/call-record.ts";
import { excelChecks } from "../../../../src/excel/check/checks.ts";
import { runChecks } from "../../../../src/excel/check/run-checks.ts";
import { openWorkbook, registerFunctions } from "../open-workbook.ts";

test("all", async () => {
  const host = openWorkbook();
  const calls = recordCalls();
  registerFunctions();
  const { results, left } = await runChecks(excelChecks, {
    calls,
    onStart: () => undefined,
    pause: (ms) => new Promise((r) => setTimeout(r, ms / 100)),
  });
  for (const { check, verdict, seen } of results) console.log(`[${verdict}] ${check.id}: ${seen}`);
  console.log(left, host.workbook.sheets.ids().length);
});
