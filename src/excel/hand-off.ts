/** The copy for the adjuster or the file. Load it when it is asked for: it brings the unpacking of workbooks with it. */
import { valuesOnly } from "../files/hand-off.ts";
import { plainCopy } from "../files/plain-copy.ts";
import { FileRefused } from "../files/unpack.ts";
import type { SheetPlan } from "../joblog/model/plan.ts";
import { base64 } from "./base64.ts";
import { LogProblem, officeCode, problemFrom } from "./office-problems.ts";
import { openFile } from "./open-file.ts";

function handOffProblem(error: unknown): LogProblem {
  if (error instanceof FileRefused)
    return new LogProblem(
      {
        what: error.message,
        remedy: "Wait until every cell shows its value, or choose Repair formulas, then try again.",
      },
      error,
    );
  if (officeCode(error) === "RequestPayloadSizeLimitExceeded")
    return new LogProblem(
      {
        what: "The copy is larger than Excel on the web opens from here. Nothing was changed.",
        remedy: "Save the workbook, open it in Excel on a computer, and make the copy there.",
      },
      error,
    );
  return problemFrom(error);
}

/**
 * Opens a values-only copy as a new workbook, which the person saves: of `saved`, a file of this workbook that the person
 * downloaded where Excel does not hand it over, else of the open workbook. Rejects with a LogProblem.
 */
export async function openHandOffCopy(saved?: Uint8Array): Promise<void> {
  try {
    await Excel.createWorkbook(base64(valuesOnly(saved ?? (await openFile()))));
  } catch (error) {
    throw handOffProblem(error);
  }
}

/** Opens a new workbook of these sheets, which hold values alone. Rejects with a LogProblem. */
export async function openPlainCopy(sheets: readonly SheetPlan[]): Promise<void> {
  try {
    await Excel.createWorkbook(base64(plainCopy(sheets)));
  } catch (error) {
    throw handOffProblem(error);
  }
}
