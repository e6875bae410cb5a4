/** Runs checks one after another, each on a blank sheet of its own, and removes what they leave. */
import { officeCode, problemFrom } from "../office-problems.ts";
import type { CallRecord } from "./call-record.ts";
import { type CheckBench, type ExcelCheck, type Finding, NotTried, sheetPrefix, wordsOf } from "./excel-check.ts";

export interface CheckResult extends Finding {
  readonly check: ExcelCheck;
}

interface Surroundings {
  readonly calls: CallRecord;
  readonly pause: CheckBench["pause"];
  /** Called before each check. */
  readonly onStart: (check: ExcelCheck, index: number) => void;
}

const usualPatience = 30_000;

/** Codes by which Excel says that it has no such thing. */
const lacking: readonly string[] = ["ApiNotFound", "ApiNotAvailable", "NotImplemented", "UnsupportedOperation"];

function findingOf(error: unknown): Finding {
  const words = wordsOf(error);
  const code = officeCode(error);
  if (code === undefined) return { verdict: "could not be tried", seen: words };
  return {
    verdict: lacking.includes(code) ? "could not be tried" : "differs",
    seen: `Excel refused (${code}): ${words}`,
  };
}

interface OwnSheet {
  readonly id: string;
  readonly name: string;
}

function ownSheets(): Promise<readonly OwnSheet[]> {
  return Excel.run(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name,items/id");
    await context.sync();
    return sheets.items.filter(({ name }) => name.startsWith(sheetPrefix)).map(({ id, name }) => ({ id, name }));
  });
}

/** The sheets of checks that were not there at the start. */
async function newSheets(former: readonly OwnSheet[]): Promise<readonly OwnSheet[]> {
  return (await ownSheets()).filter(({ id }) => !former.some((one) => one.id === id));
}

/** Deletes them. What Excel does not delete is told at the end. */
async function tidy(former: readonly OwnSheet[]): Promise<void> {
  const sheets = await newSheets(former);
  await Excel.run(async (context) => {
    for (const { id } of sheets) context.workbook.worksheets.getItem(id).delete();
    await context.sync();
  }).catch((error: unknown) => {
    console.warn("Sheets of a check stay:", error);
  });
}

function timeLimit(patience: number): { readonly reached: Promise<never>; readonly end: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const reached = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      reject(new NotTried(`No answer within ${String(patience / 1000)} s.`));
    }, patience);
  });
  return {
    reached,
    end: () => {
      clearTimeout(timer);
    },
  };
}

async function tryOne(check: ExcelCheck, sheetName: string, { calls, pause }: Surroundings): Promise<Finding> {
  const limit = timeLimit(check.patience ?? usualPatience);
  try {
    const work = Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add(sheetName);
      await context.sync();
      return check.run({ context, sheet, calls, pause });
    });
    return await Promise.race([work, limit.reached]);
  } catch (error) {
    return findingOf(error);
  } finally {
    limit.end();
  }
}

export interface CheckRun {
  /** One a check. */
  readonly results: readonly CheckResult[];
  /** Names of sheets that could not be removed. */
  readonly left: readonly string[];
}

/** Rejects with a LogProblem where the workbook's sheets cannot even be listed. */
export async function runChecks(checks: readonly ExcelCheck[], surroundings: Surroundings): Promise<CheckRun> {
  try {
    const former = await ownSheets();
    const taken = Math.max(0, ...former.map(({ name }) => Number(name.slice(sheetPrefix.length)) || 0));
    const results: CheckResult[] = [];
    for (const [index, check] of checks.entries()) {
      surroundings.onStart(check, index);
      const sheetName = `${sheetPrefix}${String(taken + index + 1)}`;
      results.push({ check, ...(await tryOne(check, sheetName, surroundings)) });
      await tidy(former);
    }
    return { results, left: (await newSheets(former)).map(({ name }) => name) };
  } catch (error) {
    throw problemFrom(error);
  }
}
