/** @module-tag landing */
import { expect, test } from "vitest";

import { buildLog, readLog, upgradeLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { ColumnDefinition, ComputedColumn, LogDefinition } from "../../../src/joblog/model/definition.ts";
import { findTable } from "../../../src/joblog/model/references.ts";
import { daysUnwritten } from "../../demo/days/demo-week.ts";
import { moment } from "./log/demo-log.ts";
import { openWorkbook } from "./log/open-workbook.ts";

const given = {
  baseline: "baselineGiven",
  baselineTemperature: "temperatureGiven",
  baselineAsRead: "asReadGiven",
} as const;

const later = [
  ...Object.values(given),
  ...["baselineSetAt", "baselineSetBy", "baselineFrom"],
  // What is said of a baseline that was written down.
  ...["baselineOlder", "readingsSay", "readingsDoubt", "baselineOff"],
];

function computedNow(id: string): ComputedColumn {
  const column = findTable(jobLog, "baths").columns.find((one) => one.id === id);
  if (column?.role !== "computed") throw new RangeError(id);
  return column;
}

/** A column as it was when a formula worked the baseline out. */
function columnThen(column: ColumnDefinition): ColumnDefinition {
  const { id } = column;
  if (id !== "baseline" && id !== "baselineTemperature" && id !== "baselineAsRead") return column;
  const { formula } = computedNow(given[id]);
  return {
    ...computedNow(given[id]),
    id,
    label: column.label,
    formula: (row, log) => formula({ ...row, baselineGiven: { kind: "here", column: "baseline" } }, log),
  };
}

/** Today's log as it was before baselines were written down. */
const before: LogDefinition = {
  ...jobLog,
  sheets: jobLog.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.map((table) =>
      table.id !== "baths"
        ? table
        : {
            ...table,
            signals: [],
            columns: table.columns
              .filter(({ id }) => !later.includes(id))
              .map(columnThen)
              .map((column) =>
                column.id === "baselineState" ? { ...computedNow("baselineState"), formula: () => "set" } : column,
              ),
          },
    ),
  })),
};

test("a log whose baselines a formula worked out has them written down by the log", async () => {
  openWorkbook();
  await buildLog(layOut({ ...before, version: 0 }, { system: "US" }, daysUnwritten));
  await upgradeLog(layOut({ ...jobLog, version: 1 }, { system: "US" }, daysUnwritten));
  const [row] = (await readLog())?.rows.baths ?? [];
  expect(row?.cells).toMatchObject({
    baseline: 11.42,
    baselineTemperature: expect.closeTo(76.7667, 4) as number,
    baselineAsRead: 11.42,
    baselineSetAt: moment("2027-03-01T09:45"),
    baselineSetBy: "the log",
    baselineFrom: "R001, R002, R003",
    baselineState: "set",
    state: "in use",
  });
  const formula = await Excel.run(async (context) => {
    const column = context.workbook.tables.getItem("Baths").columns.getItem("Baseline pH");
    const range = column.getDataBodyRange().load("formulas");
    await context.sync();
    return range.formulas[0]?.[0] as unknown;
  });
  expect(formula).toBe(11.42);
});
