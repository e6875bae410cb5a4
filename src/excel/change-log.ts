import { jobLog } from "../joblog/job-log.ts";
import type { NewRow } from "./append-ground.ts";
import { writeRows } from "./append-rows.ts";
import type { CellChanges } from "./cell-changes.ts";
import { problemFrom } from "./office-problems.ts";

export interface LogChanges extends CellChanges {
  /** Rows that are added in the same batch. */
  readonly added?: readonly NewRow[];
}

/**
 * Changes typed cells and named cells of the open workbook's log and adds rows: one read trip, one write
 * trip. Rejects with a LogProblem, with nothing changed, where a cell no longer holds what the person saw
 * or where it cannot be written.
 */
export async function changeLog({ added = [], ...changes }: LogChanges): Promise<void> {
  try {
    await Excel.run((context) => writeRows(context, jobLog, added, [], changes));
  } catch (error) {
    throw problemFrom(error);
  }
}
