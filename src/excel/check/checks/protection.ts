/** What Excel says when it may not write, and whether the message for the person fits. */
import { officeCode, problemFrom } from "../../office-problems.ts";
import {
  type CheckBench,
  type ExcelCheck,
  type Finding,
  finding,
  NotTried,
  sheetPrefix,
  wordsOf,
} from "../excel-check.ts";

/** What the refusal of `act` says; undefined where nothing is refused. */
async function refusalOf(context: Excel.RequestContext, act: () => void): Promise<unknown> {
  act();
  try {
    await context.sync();
    return undefined;
  } catch (error) {
    return error;
  }
}

function judged(refusal: unknown, fitting: string): Finding {
  if (refusal === undefined) return finding(false, "not refused");
  const { what } = problemFrom(refusal);
  return finding(
    what.includes(fitting),
    `${officeCode(refusal) ?? "no code"}: ${wordsOf(refusal)} The person reads: ${what}`,
  );
}

async function onLockedStructure({ context }: CheckBench): Promise<Finding> {
  const { protection } = context.workbook;
  protection.load("protected");
  await context.sync();
  if (protection.protected) throw new NotTried("The structure of this workbook is protected already.");
  protection.protect();
  await context.sync();
  try {
    const refusal = await refusalOf(context, () => {
      context.workbook.worksheets.add(`${sheetPrefix}refused`);
    });
    return judged(refusal, "structure");
  } finally {
    context.workbook.protection.unprotect();
    await context.sync();
  }
}

export const protectionChecks: readonly ExcelCheck[] = [
  {
    id: "write-to-a-protected-sheet",
    title: "A write to a protected sheet",
    asks: "A sheet is protected and a cell of it written; code, Excel's words, and what the person would read.",
    expected: "Refused; the person reads of a protected sheet",
    run: async ({ context, sheet }) => {
      sheet.load("name");
      sheet.protection.protect();
      await context.sync();
      try {
        const refusal = await refusalOf(context, () => {
          sheet.getRange("A1").values = [[1]];
        });
        return judged(refusal, "sheet of the log is protected");
      } finally {
        context.workbook.worksheets.getItem(sheet.name).protection.unprotect();
        await context.sync();
      }
    },
  },
  {
    id: "sheet-in-a-protected-workbook",
    title: "A new sheet in a workbook of protected structure",
    asks: "The structure is protected, without a password, and a sheet added; then it is unprotected again.",
    expected: "Refused; the person reads of a protected structure",
    run: onLockedStructure,
  },
];
