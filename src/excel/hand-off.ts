/** The copy for the adjuster or the file. Load it when it is asked for: it brings the unpacking of workbooks with it. */
import { valuesOnly } from "../files/hand-off.ts";
import { FileRefused } from "../files/unpack.ts";
import { LogProblem, officeCode, problemFrom } from "./office-problems.ts";
import { openFile } from "./open-file.ts";

/** `btoa` takes text of one character a byte, in pieces that fit the call stack. */
function base64(bytes: Uint8Array): string {
  const step = 0x8000;
  let text = "";
  for (let at = 0; at < bytes.length; at += step) text += String.fromCharCode(...bytes.subarray(at, at + step));
  return btoa(text);
}

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
