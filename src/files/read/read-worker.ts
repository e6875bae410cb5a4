/** Reads a file beside the page, which stays at hand meanwhile. One file to a worker. */
import { FileRefused } from "../unpack.ts";
import { filledFromPlan, type OpenedLog } from "./fill-from-plan.ts";
import { readWorkbook } from "./read-workbook.ts";

/** What the page asks. */
export interface ReadRequest {
  readonly file: Uint8Array;
  /** Names of the functions that the grid works out. */
  readonly functions: readonly string[];
}

/** What it gets back: a workbook, or why there is none, in sentences for the person. */
export type ReadAnswer = { readonly opened: OpenedLog } | { readonly refused: string };

/** The part of a worker's scope that is used; the project's types are a page's. */
interface WorkerScope {
  addEventListener: (type: "message", listener: (event: { readonly data: ReadRequest }) => void) => void;
  postMessage: (answer: ReadAnswer) => void;
}

function answer({ file, functions }: ReadRequest): ReadAnswer {
  try {
    return { opened: filledFromPlan(readWorkbook(file, functions)) };
  } catch (error) {
    if (error instanceof FileRefused) return { refused: error.message };
    throw error;
  }
}

const scope = self as unknown as WorkerScope;

scope.addEventListener("message", ({ data }) => {
  scope.postMessage(answer(data));
});
