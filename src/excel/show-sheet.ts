import { jobLog } from "../joblog/job-log.ts";
import { problemFrom } from "./office-problems.ts";

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
