import type { KnownValue, ValueOf } from "../../files/cell-value.ts";
import { writeWorkbook } from "../../files/xlsx-writer.ts";
import { CellError, type Scalar } from "../../joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../joblog/evaluate/evaluated-log.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import { typedLog } from "../../joblog/layout/typed-cells.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type { Job } from "./job-schema.ts";
import { contentOfJob } from "./read-job.ts";

/** A cleared cell: "" stands in the plan for it. */
function cleared(cell: CellPlan): CellPlan {
  if (cell.kind !== "value" || cell.value !== "") return cell;
  const { value: _blank, ...look } = cell;
  return { ...look, kind: "blank" };
}

/** The log of a job to the cell. */
export function planOf(job: Job): WorkbookPlan {
  const plan = layOut(jobLog, { system: job.system }, contentOfJob(job));
  return { ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(cleared) })) };
}

/** The spare rows at the end of a table are rows of it, too: their formulas show something, and ranges reach over them. */
function withSpareRows(log: LogSnapshot, plan: WorkbookPlan): LogSnapshot {
  const rows: Record<TableId, readonly AnyRow[]> = { ...log.rows };
  for (const { id, area } of plan.sheets.flatMap(({ tables }) => tables)) {
    const table = tableIds.find((one) => one === id);
    const last = area.rows - 2;
    if (table !== undefined && (rows[table].at(-1)?.position ?? -1) < last)
      rows[table] = [...rows[table], { position: last, cells: {} }];
  }
  return { fields: log.fields, rows };
}

const tableIds: readonly TableId[] = jobLog.sheets.flatMap(({ tables }) => tables.map(({ id }) => id));

function known(value: Scalar | undefined): KnownValue | undefined {
  if (value instanceof CellError) return { error: value.code };
  // A formula that comes to a blank cell shows 0 in Excel; those of the log ask first whether it is blank.
  return value === null ? "" : value;
}

function asker(sheet: SheetPlan, log: EvaluatedLog, fields: ReadonlyMap<string, string>) {
  return (row: number, column: number): Scalar | undefined => {
    const field = fields.get(`${sheet.name} ${String(row)} ${String(column)}`);
    if (field !== undefined) return log.named(field);
    const table = sheet.tables.find(
      ({ area }) =>
        row > area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns,
    );
    const id = tableIds.find((one) => one === table?.id);
    const cell = table?.columns[column - table.area.column]?.id;
    return table === undefined || id === undefined || cell === undefined
      ? undefined
      : log.cell(id, cell, row - table.area.row - 1);
  };
}

/** What each formula of a plan shows, worked out without a spreadsheet. */
function valuesOf(plan: WorkbookPlan): ValueOf {
  const log = new EvaluatedLog(jobLog, withSpareRows(typedLog(plan), plan), [], "everything");
  const ids = new Map(jobLog.sheets.flatMap(({ fields }) => fields.map(({ id, name }) => [name, id] as const)));
  const fields = new Map(
    plan.names.map(({ name, sheet, row, column }) => [
      `${sheet} ${String(row)} ${String(column)}`,
      ids.get(name) ?? "",
    ]),
  );
  const askers = new Map(plan.sheets.map((sheet) => [sheet.name, asker(sheet, log, fields)]));
  return (sheet, row, column) => known(askers.get(sheet)?.(row, column));
}

/** The job's log as an .xlsx file, true values beside its formulas. */
export function writeLog(job: Job): Promise<Uint8Array> {
  const plan = planOf(job);
  return writeWorkbook(plan, valuesOf(plan));
}
