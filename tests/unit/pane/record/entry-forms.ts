import type { LogContext } from "../../../../src/advice/log-context.ts";
import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import type { Cells, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft, EntryForm } from "../../../../src/pane/record/entry-form.ts";
import { type FilledForm, fillForm } from "../../../../src/pane/record/fill-form.ts";

/** The bath of the invented days in US units. */
export const bath = "B-T1-0301";

/** A form filled in as a person would, on the invented Thursday unless a test says otherwise. */
export function fill(form: EntryForm, log: LogSnapshot, typed: Draft, now = "2027-03-08T08:50"): FilledForm {
  const context: LogContext = { log, system: "US", bath, now };
  return fillForm(form, typed, context);
}

export const said = (filled: FilledForm): string => filled.meaning.findings.map((finding) => finding.text).join("\n");

export const asked = (filled: FilledForm): string => (filled.meaning.doubts ?? []).join("\n");

/** A log with other cells in one row of a table, as if a person had typed or a formula had given them. */
export function withCells<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  key: string,
  cells: SnapshotRow<Table>["cells"],
): LogSnapshot {
  const rows = log.rows[table].map((row) =>
    Object.values(row.cells)[0] === key ? { ...row, cells: { ...row.cells, ...cells } } : row,
  );
  return { ...log, rows: { ...log.rows, [table]: rows } };
}

/** What a form writes to a table: those cells of each of its rows. */
export function written<Table extends TableId>(
  { meaning }: FilledForm,
  table: Table,
  ...columns: readonly ColumnId<Table>[]
): readonly (readonly unknown[])[] {
  return meaning.rows
    .filter((one) => one.table === table)
    .map(({ row }) => {
      const held: Cells = row;
      return columns.map((column) => held[column]);
    });
}

/** A log with further rows in a table. */
export function withRows<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  more: readonly LogRow<Table>[],
): LogSnapshot {
  const rows = [
    ...log.rows[table],
    ...more.map((cells, index) => ({ position: log.rows[table].length + index, cells })),
  ];
  return { ...log, rows: { ...log.rows, [table]: rows } };
}
