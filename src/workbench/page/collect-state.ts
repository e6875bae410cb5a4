import type { SheetToWrite } from "../../files/write/write-worker.ts";
import type { BookState } from "../../state/workbook-state.ts";
import type { Host } from "../host/create-host.ts";
import { stateInParts } from "../host/state/make-state.ts";

/** A workbook of one moment, with what its cells showed. */
export interface CollectedWorkbook {
  readonly book: BookState;
  readonly sheets: readonly SheetToWrite[];
}

/** How often a workbook that changes meanwhile is begun anew before it is taken in one go. */
const patientTries = 5;

/** Undefined where the workbook changed during a pause. */
async function tryCollecting(host: Host, pause: () => Promise<void>): Promise<CollectedWorkbook | undefined> {
  const { workbook } = host;
  let isChanged = false;
  const stop = workbook.edits.onEdit(() => {
    isChanged = true;
  });
  const isStale = (): boolean => isChanged || host.workbook !== workbook;
  try {
    const { book, sheet } = stateInParts(workbook);
    const sheets: SheetToWrite[] = [];
    for (const id of book.order) {
      const state = sheet(id);
      await pause();
      if (isStale()) return undefined;
      const shown = host.shown({ book, sheets: [state] }).get(id);
      if (shown !== undefined) sheets.push({ state, shown });
      await pause();
      if (isStale()) return undefined;
    }
    return { book, sheets };
  } finally {
    stop();
  }
}

function inOneGo(host: Host): CollectedWorkbook {
  const { book, sheets } = host.save();
  const shown = host.shown({ book, sheets });
  return {
    book,
    sheets: sheets.flatMap((state) => {
      const found = shown.get(state.id);
      return found === undefined ? [] : [{ state, shown: found }];
    }),
  };
}

/** Takes a workbook sheet by sheet and lets the page breathe between them. Throws NotWorkedOut. */
export async function collectWorkbook(host: Host, pause: () => Promise<void>): Promise<CollectedWorkbook> {
  for (let tries = 0; tries < patientTries; tries += 1) {
    const collected = await tryCollecting(host, pause);
    if (collected !== undefined) return collected;
  }
  return inOneGo(host);
}
