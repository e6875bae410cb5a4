/** @module-tag landing */
import { expect, test } from "vitest";

import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { ColumnDefinition, LogDefinition } from "../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "./log/open-workbook.ts";

const later: ReadonlySet<string> = new Set(["chartPh2", "chartPh3", "chartPh4"]);

/** As the charts' columns were before they read the sheet Charts: what they said does not matter here. */
function withoutCharts(column: ColumnDefinition): ColumnDefinition {
  return column.role === "computed" && column.id.startsWith("chart") ? { ...column, formula: () => "=NA()" } : column;
}

/** A log of this version from before the sheet Charts. */
const before: LogDefinition = {
  ...jobLog,
  sheets: jobLog.sheets
    .filter(({ id }) => id !== "charts")
    .map((sheet) => ({
      ...sheet,
      tables: sheet.tables.map((table) => ({
        ...table,
        columns: table.columns.filter(({ id }) => !later.has(id)).map(withoutCharts),
        signals: (table.signals ?? []).filter(({ column }) => !later.has(column)),
      })),
    })),
};

test("Building a log again that lacks the sheet Charts adds it with a chart for each of four baths, and keeps every entry", async () => {
  openWorkbook();
  await buildLog(layOut(before, { system: "US" }, firstTwoDays));
  const report = await buildLog(layOut(jobLog, { system: "US" }, { fields: {}, rows: {} }));
  expect(report.added).toEqual(["Charts"]);
  expect(report.addedColumns.filter(({ table }) => table === "Readings")).toHaveLength(later.size);
  const log = await readLog();
  expect(log?.rows.readings.map(({ cells }) => cells.ph)).toEqual(firstTwoDays.rows.readings?.map(({ ph }) => ph));
  expect(log?.fields.chartFirst).toBe("Bath B-T1-0301: baseline 11.42, trigger 10.92");
  expect(log?.fields.chartSecond).toBe("No second bath yet: the chart is empty");
  const names = await Excel.run(async (context) => {
    const { charts } = context.workbook.worksheets.getItem("Charts");
    charts.load("items/name");
    await context.sync();
    return charts.items.map(({ name }) => name);
  });
  expect(names).toEqual([
    "Bathsheet.pH",
    "Bathsheet.pH2",
    "Bathsheet.Concentrate",
    "Bathsheet.Cost",
    "Bathsheet.pH3",
    "Bathsheet.pH4",
  ]);
}, 120_000);
