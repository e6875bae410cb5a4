import { type CallRecord, recordCalls } from "../../../../src/excel/check/call-record.ts";
import { excelChecks } from "../../../../src/excel/check/checks.ts";
import type { ExcelCheck } from "../../../../src/excel/check/excel-check.ts";
import { type CheckRun, runChecks } from "../../../../src/excel/check/run-checks.ts";
import { registerFunctions } from "../log/open-workbook.ts";

/** Nothing is worked out later here, so the checks need not wait as long as in Excel. */
const shortPause = (milliseconds: number): Promise<void> =>
  new Promise((resume) => setTimeout(resume, milliseconds / 100));

/** The functions of the open workbook, with a record of their calls, as the page has it. */
function listen(): CallRecord {
  const calls = recordCalls();
  registerFunctions();
  return calls;
}

export function runHere(checks: readonly ExcelCheck[], calls: CallRecord = listen()): Promise<CheckRun> {
  return runChecks(checks, { calls, pause: shortPause, onStart: () => undefined });
}

export function checkOf(id: string): ExcelCheck {
  const check = excelChecks.find((one) => one.id === id);
  if (check === undefined) throw new RangeError(`There is no check ${id}.`);
  return check;
}

/** Verdict and what was seen, without times. */
export async function answerOf(id: string): Promise<string> {
  const { results } = await runHere([checkOf(id)]);
  return results.map(({ verdict, seen }) => `${verdict}: ${seen.replace(/\d+ ms/g, "… ms")}`).join();
}
