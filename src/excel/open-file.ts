/** The open workbook as a file, where the host hands it over. */
import { LogProblem } from "./office-problems.ts";

/** What Office on an iPad hands over at once; other hosts take as little. */
const sliceSize = 1 << 16;

/**
 * Whether this host gives the workbook as a file. Microsoft's pages disagree about Excel on the web: the reference of
 * `getFileAsync` says that it gives PDF only, the page of requirement sets lists it under CompressedFile. So it is asked.
 */
export function handsFileOver(): boolean {
  const { requirements } = Office.context;
  return requirements.isSetSupported("CompressedFile", "1.1") && requirements.isSetSupported("File", "1.1");
}

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
export async function openFile(): Promise<Uint8Array> {
  const file = await answerOf<Office.File>((callback) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize }, callback);
  });
  try {
    return await wholeFile(file);
  } finally {
    file.closeAsync();
  }
}
