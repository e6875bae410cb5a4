/** The copy for the adjuster or the file. Load it when it is asked for: it brings the unpacking of workbooks with it. */
import { valuesOnly } from "../files/hand-off.ts";
import { FileRefused } from "../files/unpack.ts";
import { LogProblem, problemFrom } from "./office-problems.ts";

/** What Office on an iPad hands over at once; other hosts take as little. */
const sliceSize = 1 << 16;

const notHandedOver = (message: string): LogProblem =>
  new LogProblem({
    what: `Excel did not hand the workbook over: ${message}`,
    remedy: "Save the workbook, close other panes that use it, then try again.",
  });

function answerOf<Value>(ask: (callback: (result: Office.AsyncResult<Value>) => void) => void): Promise<Value> {
  return new Promise((resolve, reject) => {
    ask((result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
      else reject(notHandedOver(result.error.message));
    });
  });
}

async function wholeFile(file: Office.File): Promise<Uint8Array> {
  const whole = new Uint8Array(file.size);
  let at = 0;
  for (let index = 0; index < file.sliceCount; index += 1) {
    const slice = await answerOf<Office.Slice>((callback) => {
      file.getSliceAsync(index, callback);
    });
    const bytes = Uint8Array.from(slice.data as ArrayLike<number>);
    whole.set(bytes, at);
    at += bytes.length;
  }
  return whole;
}

/** The open workbook as it would be saved now. At most two files may be open, so it is closed whatever happens. */
async function openFile(): Promise<Uint8Array> {
  const file = await answerOf<Office.File>((callback) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize }, callback);
  });
  try {
    return await wholeFile(file);
  } finally {
    file.closeAsync();
  }
}

/** `btoa` takes text of one character a byte, in pieces that fit the call stack. */
function base64(bytes: Uint8Array): string {
  const step = 0x8000;
  let text = "";
  for (let at = 0; at < bytes.length; at += step) text += String.fromCharCode(...bytes.subarray(at, at + step));
  return btoa(text);
}

/** Opens a values-only copy of this workbook as a new one, which the person saves. Rejects with a LogProblem. */
export async function openHandOffCopy(): Promise<void> {
  try {
    await Excel.createWorkbook(base64(valuesOnly(await openFile())));
  } catch (error) {
    if (error instanceof FileRefused) {
      throw new LogProblem(
        {
          what: error.message,
          remedy: "Wait until every cell shows its value, or choose Repair formulas, then try again.",
        },
        error,
      );
    }
    throw problemFrom(error);
  }
}
