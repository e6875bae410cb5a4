import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { findTable } from "../../joblog/model/references.ts";
import type { EntryField } from "./entry-form.ts";

export function inputColumn(table: TableId, id: string): InputColumn {
  const column = findTable(jobLog, table).columns.find((one) => one.id === id);
  if (column?.role !== "input") throw new RangeError(`Table ${table} has no input column ${id}.`);
  return column;
}

/** Columns of a table that a person types into, the row's key first. */
export function inputIds(table: TableId): readonly string[] {
  return findTable(jobLog, table)
    .columns.filter(({ role }) => role === "input")
    .map(({ id }) => id);
}

function choicesOf(column: InputColumn, log: LogSnapshot | undefined): readonly string[] | undefined {
  const { choices } = column;
  if (choices === undefined) return undefined;
  if (choices.kind === "fixed") return choices.choices;
  const keys = log?.rows[choices.table].map((row) => row.cells[choices.column]) ?? [];
  return keys.filter((key) => key !== undefined).map(String);
}

/** A form field that writes to a column of the log, with the choices that the log holds now. */
export function field(
  log: LogSnapshot | undefined,
  table: TableId,
  id: string,
  change: Partial<
    Pick<EntryField, "key" | "required" | "label" | "choices" | "suggestions" | "anyTime" | "afterClose">
  > = {},
): EntryField {
  const column = inputColumn(table, id);
  const choices = change.choices ?? choicesOf(column, log);
  return {
    key: change.key ?? id,
    column,
    required: change.required ?? column.required,
    ...(change.label === undefined ? {} : { label: change.label }),
    ...(choices === undefined ? {} : { choices }),
    ...(change.suggestions === undefined ? {} : { suggestions: change.suggestions }),
    ...(change.anyTime === undefined ? {} : { anyTime: change.anyTime }),
    ...(change.afterClose === undefined ? {} : { afterClose: change.afterClose }),
  };
}

/** Different texts of a column, in the order in which they first stand in the log. */
export function textsOf(log: LogSnapshot, table: TableId, column: string): readonly string[] {
  const texts = log.rows[table].flatMap((row) => row.cells[column] ?? []).map(String);
  return [...new Set(texts)];
}

/** Who did it: offers the shop's people, takes any initials. */
export function initialsField(log: LogSnapshot, table: TableId): EntryField {
  return field(log, table, "initials", { required: false, suggestions: textsOf(log, "people", "initials") });
}

/** Which meter: offers those that the log knows, takes any name. */
export function meterField(log: LogSnapshot, table: "readings" | "meterChecks"): EntryField {
  return field(log, table, "meter", { suggestions: metersOf(log) });
}

export function metersOf(log: LogSnapshot): readonly string[] {
  return [...new Set([...textsOf(log, "meterChecks", "meter"), ...textsOf(log, "readings", "meter")])];
}
