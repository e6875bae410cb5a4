/** The report as a sheet, so that it can be sent as a workbook. */
import { cellText } from "../cell-text.ts";
import { problemFrom } from "../office-problems.ts";
import { type CheckReport, headLines } from "./report.ts";

const wanted = "Excel check";

const headings = ["Check", "Result", "Seen", "Expected", "Asked", "Id"];

const widths = [220, 110, 320, 320, 320, 200];

/** A sheet of the person's that is called so stays as it is. */
function freeName(taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? wanted : `${wanted} ${String(count)}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** Lays the report on a new sheet, shows it, and gives the sheet's name. Rejects with a LogProblem. */
export async function layReport(report: CheckReport): Promise<string> {
  try {
    return await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      const name = freeName(worksheets.items.map((sheet) => sheet.name));
      const sheet = worksheets.add(name);
      const lines = headLines(report);
      const rows = report.results.map(({ check, verdict, seen }) =>
        [check.title, verdict, seen, check.expected, check.asks, check.id].map(cellText),
      );
      const firstRow = lines.length + 1;
      sheet.getRangeByIndexes(0, 0, lines.length, 1).values = lines.map((line) => [cellText(line)]);
      sheet.getRangeByIndexes(firstRow, 0, rows.length + 1, headings.length).values = [headings, ...rows];
      widths.forEach((width, column) => {
        sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = width;
      });
      for (const row of [0, firstRow]) sheet.getRangeByIndexes(row, 0, 1, headings.length).format.font.bold = true;
      const table = sheet.getRangeByIndexes(firstRow, 0, rows.length + 1, headings.length);
      table.format.wrapText = true;
      table.format.verticalAlignment = "Top";
      sheet.activate();
      await context.sync();
      return name;
    });
  } catch (error) {
    throw problemFrom(error);
  }
}
