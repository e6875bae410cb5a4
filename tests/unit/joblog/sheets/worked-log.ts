import type { ColumnId, FieldId } from "../../../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { Cells, LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import { findTable } from "../../../../src/joblog/model/references.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { openLog } from "../../excel/log/prepared-log.ts";
import { baselinesWritten } from "../evaluate/baselines-written.ts";
import { workedOut } from "../evaluate/worked-out.ts";
import { weekStarts } from "./week-of-sheets.ts";

export interface WorkedLog {
  /** What a cell shows, "" for nothing; the row by its first column. */
  readonly cell: <Table extends TableId>(table: Table, key: string, column: ColumnId<Table>) => unknown;
  /** A claim's row for a bath. */
  readonly share: (bath: string, claim: string, column: ColumnId<"shares">) => unknown;
  readonly field: (id: FieldId) => unknown;
}

/** A log with its formulas worked out, by cell; the baselines that its readings give are written down first, as the pane does. */
export async function workedLog(content: LogContent, system: "US" | "metric" = "US"): Promise<WorkedLog> {
  return asTyped(await baselinesWritten(content, system), system);
}

/** The same of what was typed and nothing else. */
export async function asTyped(content: LogContent, system: "US" | "metric" = "US"): Promise<WorkedLog> {
  const log = await workedOut(content, system, weekStarts);
  return {
    cell: (table, key, column) => {
      const [first] = findTable(jobLog, table).columns;
      const row = log.rows[table].find(({ cells }) => {
        const held: Cells = cells;
        return String(held[first?.id ?? ""]) === key;
      });
      if (row === undefined) throw new Error(`${table} has no row ${key}.`);
      const { cells } = row;
      return cells[column] ?? "";
    },
    share: (bath, claim, column) => {
      const row = log.rows.shares.find(({ cells }) => cells.bath === bath && cells.claim === claim);
      if (row === undefined) throw new Error(`Shares has no row of ${claim} in ${bath}.`);
      return row.cells[column] ?? "";
    },
    field: (id) => log.fields[id] ?? "",
  };
}

/** The demo days with some tables' rows replaced. */
export function demoWith(rows: LogContent["rows"]): LogContent {
  return { ...firstTwoDays, rows: { ...firstTwoDays.rows, ...rows } };
}

/** The demo days' rows of a table and more. */
export function demoRowsAnd<Table extends TableId>(
  table: Table,
  ...more: readonly LogRow<Table>[]
): readonly LogRow<Table>[] {
  return [...(firstTwoDays.rows[table] ?? []), ...more];
}

/** Every text or number that computed cells of an empty log show, with the column's id. */
export async function shownByEmptyLog(system: "US" | "metric"): Promise<readonly string[]> {
  const empty: LogContent = { fields: {}, rows: {} };
  const plan = layOut(jobLog, { system }, empty);
  const host = await openLog(empty, system);
  return plan.sheets.flatMap((sheet) => {
    const values = host.values(sheet.name);
    return sheet.tables.flatMap((table) =>
      table.columns.flatMap((column, index) => {
        const value = values[table.area.row + 1]?.[table.area.column + index] ?? "";
        return column.formula === undefined || value === "" ? [] : [`${table.name} ${column.id}: ${String(value)}`];
      }),
    );
  });
}
