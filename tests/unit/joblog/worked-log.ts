import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import { firstTwoDays } from "../../demo-days/demo-week.ts";
import type { LogContent, LogRow } from "../../../src/joblog/definition.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/lay-out.ts";
import { findField, findTable } from "../../../src/joblog/references.ts";
import { openWorkbook } from "../excel/open-workbook.ts";

export interface WorkedLog {
  /** What a cell shows, "" for nothing; the row by its first column. */
  readonly cell: (table: TableId, key: string, column: string) => unknown;
  readonly field: (id: string) => unknown;
}

/** Builds a log in the stand-in host and lets the formulas work it out. */
export async function workedLog(content: LogContent, system: "US" | "metric" = "US"): Promise<WorkedLog> {
  openWorkbook();
  await buildLog(layOut(jobLog, { system }, content));
  const log = await readLog();
  if (log === undefined) throw new Error("The log was built but cannot be read.");
  return {
    cell: (table, key, column) => {
      const row = log.rows[table].find((one) => String(one.cells[findTable(jobLog, table).columns[0]?.id ?? ""]) === key);
      if (row === undefined) throw new Error(`${table} has no row ${key}.`);
      if (!findTable(jobLog, table).columns.some((one) => one.id === column)) throw new Error(`${table} has no column ${column}.`);
      return row.cells[column] ?? "";
    },
    field: (id) => log.fields[findField(jobLog, id).id] ?? "",
  };
}

/** The demo days with some tables' rows replaced. */
export function demoWith(rows: LogContent["rows"]): LogContent {
  return { ...firstTwoDays, rows: { ...firstTwoDays.rows, ...rows } };
}

/** The demo days' rows of a table and more. */
export function demoRowsAnd(table: TableId, ...more: readonly LogRow[]): readonly LogRow[] {
  return [...(firstTwoDays.rows[table] ?? []), ...more];
}

/** Every text or number that computed cells of an empty log show, with the column's id. */
export async function shownByEmptyLog(system: "US" | "metric"): Promise<readonly string[]> {
  const host = openWorkbook();
  const plan = layOut(jobLog, { system }, { fields: {}, rows: {} });
  await buildLog(plan);
  return plan.sheets.flatMap((sheet) => {
    const values = host.values(sheet.name);
    return sheet.tables.flatMap((table) => table.columns.flatMap((column, index) => {
      const value = values[table.area.row + 1]?.[table.area.column + index] ?? "";
      return column.formula === undefined || value === "" ? [] : [`${table.name} ${column.id}: ${String(value)}`];
    }));
  });
}
