import { Cancelled } from "./log-problems.ts";

/** How far a piece of long work has come: `words` for the person, the counts for a bar. */
export interface Progress {
  readonly step: number;
  readonly of: number;
  readonly words: string;
}

/** Work that takes several trips to the workbook: it tells how far it is and stops between two trips when asked. */
export interface LongWork {
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

/** Throws Cancelled with `what`, a sentence on the state that the workbook is left in. */
export function checkNotCancelled({ signal }: LongWork, what: string): void {
  if (signal?.aborted === true) throw new Cancelled(what);
}

/** As long as a frame at 60 Hz: after none at all the next step was often under way before the last was drawn. */
const frame = 16;

/** Tells of the next step and lets the page draw it and take a press on Cancel. */
export async function announce({ onProgress }: LongWork, progress: Progress): Promise<void> {
  if (onProgress === undefined) return;
  onProgress(progress);
  await new Promise((resume) => setTimeout(resume, frame));
}
