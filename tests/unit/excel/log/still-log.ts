import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { WorkbookPlan } from "../../../../src/joblog/model/plan.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";

/** Checks of the demo days' bath, 200 a day. */
export function readingsOf(count: number, letter = "R"): readonly LogRow<"readings">[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `${letter}${String(index + 1).padStart(4, "0")}`,
    bath: "B-T1-0301",
    when: 46447 + index / 200,
    purpose: "check",
    ph: 11.4,
  }));
}

/** The demo days with so many readings. */
export function daysWithReadings(count: number): LogContent {
  return { ...firstTwoDays, rows: { ...firstTwoDays.rows, readings: readingsOf(count) } };
}

/**
 * A plan with formulas whose values stand still, each as long as it was: what they say plays no part in what goes between
 * the add-in and the workbook, and to work them out takes most of the time.
 */
export function stillPlan(plan: WorkbookPlan): WorkbookPlan {
  const still = (formula: string): string => `=1+1${" ".repeat(Math.max(0, formula.length - 4))}`;
  return {
    ...plan,
    sheets: plan.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => (cell.kind === "formula" ? { ...cell, formula: still(cell.formula) } : cell)),
      tables: sheet.tables.map((table) => ({
        ...table,
        columns: table.columns.map((column) =>
          column.formula === undefined ? column : { ...column, formula: still(column.formula) },
        ),
      })),
    })),
  };
}

export function stillLog(content: LogContent): WorkbookPlan {
  return stillPlan(layOut(jobLog, { system: "US" }, content));
}
