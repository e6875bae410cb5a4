import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { filledContent } from "../../joblog/layout/lay-out.ts";
import type { Cells, RowValue } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Job } from "../job/job-schema.ts";
import { contentOfJob } from "../job/read-job.ts";

const tables = jobLog.sheets
  .flatMap((sheet) => sheet.tables)
  .map(({ id, columns }) => ({ id, inputs: columns.flatMap((one) => (one.role === "input" ? [one.id] : [])) }));

const typedFields = jobLog.sheets.flatMap((sheet) => sheet.fields).filter(({ formula }) => formula === undefined);

/** "" stands for a cell that is cleared. */
const typed = (value: RowValue | undefined): RowValue | undefined => (value === "" ? undefined : value);

/** A log of the job as it would be read before any formula of it was worked out, without laying it out to the cell. */
export function snapshotOf(job: Job): LogSnapshot {
  const content = filledContent(jobLog, job.system, contentOfJob(job));
  const held: Cells = content.fields;
  const rows: Partial<Record<TableId, readonly AnyRow[]>> = {};
  for (const { id, inputs } of tables) {
    const lines: readonly Cells[] = content.rows[id] ?? [];
    rows[id] = lines.flatMap((line, position) => {
      const cells = Object.fromEntries(inputs.map((column) => [column, typed(line[column])]));
      return inputs.some((column) => cells[column] !== undefined) ? [{ position, cells }] : [];
    });
  }
  return {
    fields: Object.fromEntries(typedFields.map(({ id, initial }) => [id, typed(held[id] ?? initial?.[job.system])])),
    // Every table of the log is among them.
    rows: rows as LogSnapshot["rows"],
  };
}
