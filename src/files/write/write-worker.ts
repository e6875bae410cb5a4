/** Writes a file beside the page, which stays at hand meanwhile. One file to a worker. */
import type { BookState, SheetState } from "../../state/workbook-state.ts";
import type { ShownSheet } from "./known-values.ts";
import { writeState, type WrittenFile } from "./write-state.ts";

/** A sheet with what its cells show. */
export interface SheetToWrite {
  readonly state: SheetState;
  readonly shown: ShownSheet;
}

/** What the page sends: the sheets one by one, and at the end what they make up. */
export type WriteRequest = { readonly sheet: SheetToWrite } | { readonly book: BookState };

/** What it gets back at the end: a file, or why there is none. */
export type WriteAnswer = WrittenFile | { readonly refused: string };

/** The part of a worker's scope that is used; the project's types are a page's. */
interface WorkerScope {
  addEventListener: (type: "message", listener: (event: { readonly data: WriteRequest }) => void) => void;
  postMessage: (answer: WriteAnswer) => void;
}

const sheets: SheetToWrite[] = [];

function answer(book: BookState): WriteAnswer {
  try {
    return writeState(
      { book, sheets: sheets.map(({ state }) => state) },
      new Map(sheets.map(({ state, shown }) => [state.id, shown] as const)),
    );
  } catch (error) {
    if (error instanceof RangeError) return { refused: error.message };
    throw error;
  }
}

const scope = self as unknown as WorkerScope;

scope.addEventListener("message", ({ data }) => {
  if ("sheet" in data) sheets.push(data.sheet);
  else scope.postMessage(answer(data.book));
});
