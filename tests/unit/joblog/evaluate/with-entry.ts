import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { Cells, LogContent } from "../../../../src/joblog/model/definition.ts";
import { findTable } from "../../../../src/joblog/model/references.ts";
import type { Meaning } from "../../../../src/pane/record/entry-form.ts";

/** A log's content once an entry stands in it: its new rows, and the blanks that it fills in earlier ones. Not for entries that change rows. */
export function withEntry(content: LogContent, { rows: added, fills = [], changes = [] }: Meaning): LogContent {
  if (changes.length > 0) throw new RangeError("The entry changes rows of the log.");
  const rows: Partial<Record<TableId, readonly Cells[]>> = { ...content.rows };
  for (const { table, row } of added) rows[table] = [...(rows[table] ?? []), row];
  for (const { table, key, cells } of fills) {
    const [first] = findTable(jobLog, table).columns;
    rows[table] = (rows[table] ?? []).map((row) => (row[first?.id ?? ""] === key ? { ...row, ...cells } : row));
  }
  return { ...content, rows };
}
