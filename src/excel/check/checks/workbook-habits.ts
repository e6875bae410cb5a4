/** Single questions about tables, null objects, pages, dates and start. */
import { officeCode } from "../../office-problems.ts";
import { type ExcelCheck, finding, NotTried, spelled } from "../excel-check.ts";

export const habitChecks: readonly ExcelCheck[] = [
  {
    id: "filter-state-without-buttons",
    title: "The filter of a table without filter buttons",
    asks: "showFilterButton = false, then autoFilter.isDataFiltered.",
    expected: "false, or a refusal: Bathsheet does not ask such tables",
    run: async ({ context, sheet }) => {
      sheet.getRange("A1:A2").values = [["Bath"], ["B1"]];
      const table = sheet.tables.add("A1:A2", true);
      table.showFilterButton = false;
      await context.sync();
      try {
        const filter = table.autoFilter.load("isDataFiltered");
        await context.sync();
        return finding(!filter.isDataFiltered, String(filter.isDataFiltered));
      } catch (error) {
        const code = officeCode(error);
        if (code === undefined) throw error;
        return finding(true, `refused: ${code}`);
      }
    },
  },
  {
    id: "null-object-of-a-missing-column",
    title: "A chain of calls on a missing column",
    asks: 'columns.getItemOrNullObject("gone").getDataBodyRange().getUsedRangeOrNullObject(true) in one trip, and the same of a blank column.',
    expected: "Null objects both, and no refusal",
    run: async ({ context, sheet }) => {
      sheet.getRange("A1:B2").values = [
        ["Bath", "Note"],
        ["B1", ""],
      ];
      const table = sheet.tables.add("A1:B2", true);
      const [gone, blank] = ["gone", "Note"].map((name) =>
        table.columns.getItemOrNullObject(name).getDataBodyRange().getUsedRangeOrNullObject(true).load("rowIndex"),
      );
      await context.sync();
      const isNull = (range: Excel.Range | undefined): boolean => range?.isNullObject === true;
      const word = (range: Excel.Range | undefined): string => (isNull(range) ? "a null object" : "a range");
      return finding(isNull(gone) && isNull(blank), `missing: ${word(gone)}, blank: ${word(blank)}`);
    },
  },
  {
    id: "one-page-wide",
    title: "A sheet one page wide",
    asks: "pageLayout.zoom = { horizontalFitToPages: 1 }; read back.",
    expected: "horizontalFitToPages 1",
    run: async ({ context, sheet }) => {
      sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
      await context.sync();
      const layout = sheet.pageLayout.load("zoom");
      await context.sync();
      const { horizontalFitToPages, scale } = layout.zoom;
      return finding(
        horizontalFitToPages === 1,
        `horizontalFitToPages ${spelled(horizontalFitToPages)}, scale ${spelled(scale)}`,
      );
    },
  },
  {
    id: "date-system",
    title: "Which day is 1",
    asks: "=DATE(2026,11,25)",
    expected: "46351, by days from 1900; a workbook with days from 1904 shows 44889",
    run: async ({ context, sheet }) => {
      const cell = sheet.getRange("A1");
      cell.formulas = [["=DATE(2026,11,25)"]];
      cell.load("values");
      await context.sync();
      const value: unknown = cell.values[0]?.[0];
      return finding(value === 46_351, spelled(value));
    },
  },
  {
    id: "startup-behavior",
    title: "Starting with the workbook",
    asks: "setStartupBehavior(load), getStartupBehavior, and back to what it was.",
    expected: "Load",
    run: async () => {
      if (!Office.context.requirements.isSetSupported("SharedRuntime", "1.1"))
        throw new NotTried("This Excel has no shared runtime.");
      const before = await Office.addin.getStartupBehavior();
      await Office.addin.setStartupBehavior(Office.StartupBehavior.load);
      const after = await Office.addin.getStartupBehavior();
      await Office.addin.setStartupBehavior(before);
      return finding(after === Office.StartupBehavior.load, `${after}, before ${before}`);
    },
  },
];
