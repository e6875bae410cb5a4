import { jobLog } from "../joblog/job-log.ts";
import { findTable } from "../joblog/model/references.ts";
import { problemFrom } from "./office-problems.ts";
import type { Receipt } from "./record/receipt.ts";

/**
 * Brings the sheet that holds the log's sheet `id` to the front, whatever it is called now. Throws a
 * RangeError where the log has no such sheet; every failure of Excel is a LogProblem.
 */
export async function showSheet(id: string): Promise<void> {
  const table = jobLog.sheets.find((sheet) => sheet.id === id)?.tables[0];
  if (table === undefined) throw new RangeError(`The log has no sheet "${id}" with a table.`);
  try {
    await Excel.run(async (context) => {
      context.workbook.tables.getItem(table.name).worksheet.activate();
      await context.sync();
    });
  } catch (error) {
    throw problemFrom(error);
  }
}

/**
 * Selects the last row that an entry wrote, its sheet in front, so that the person sees what stands there. Does nothing
 * where the entry wrote no row, or Excel lets nothing be selected now.
 */
export async function showWritten({ rows }: Receipt): Promise<void> {
  const last = rows.at(-1);
  if (last === undefined) return;
  try {
    await Excel.run(async (context) => {
      const table = context.workbook.tables.getItem(findTable(jobLog, last.table).name);
      table.worksheet.activate();
      table.getDataBodyRange().getCell(last.position, 0).select();
      await context.sync();
    });
  } catch {
    // The entry stands; only the view of it does not move, as while a cell is being edited.
  }
}
