import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { findTable } from "../../joblog/model/references.ts";
import type { EntryField } from "./entry-form.ts";

/** Columns of a table that a person types into, the row's key first. */
export function inputColumns(table: TableId): readonly InputColumn[] {
  return findTable(jobLog, table).columns.filter((column) => column.role === "input");
}

/** The column of that id, where the description alone knows it. Throws a RangeError for one that nobody types into. */
export function describedColumn(table: TableId, id: string): InputColumn {
  const column = inputColumns(table).find((one) => one.id === id);
  if (column === undefined) throw new RangeError(`Table ${table} has no input column ${id}.`);
  return column;
}

export function inputColumn<Table extends TableId>(table: Table, id: ColumnId<Table>): InputColumn {
  return describedColumn(table, id);
}

function choicesOf(column: InputColumn, log: LogSnapshot | undefined): readonly string[] | undefined {
  const { choices } = column;
  if (choices === undefined) return undefined;
  if (choices.kind === "fixed") return choices.choices;
  const rows: readonly AnyRow[] = log?.rows[choices.table] ?? [];
  const keys = rows.map(({ cells }) => cells[choices.column]);
  return keys.filter((key) => key !== undefined).map(String);
}

/** What a form asks for otherwise than the log does. */
export type FieldChange = Partial<
  Pick<EntryField, "key" | "required" | "label" | "choices" | "suggestions" | "isWho" | "anyTime" | "afterClose">
>;

/** A form field that writes to a column of the log, with the choices that the log holds now. */
export function field<Table extends TableId>(
  log: LogSnapshot | undefined,
  table: Table,
  id: ColumnId<Table>,
  change: FieldChange = {},
): EntryField {
  return fieldOf(log, inputColumn(table, id), change);
}

export function fieldOf(log: LogSnapshot | undefined, column: InputColumn, change: FieldChange = {}): EntryField {
  const choices = change.choices ?? choicesOf(column, log);
  return {
    key: change.key ?? column.id,
    column,
    required: change.required ?? column.required,
    ...(change.label === undefined ? {} : { label: change.label }),
    ...(choices === undefined ? {} : { choices }),
    ...(change.suggestions === undefined ? {} : { suggestions: change.suggestions }),
    ...(change.isWho === undefined ? {} : { isWho: change.isWho }),
    ...(change.anyTime === undefined ? {} : { anyTime: change.anyTime }),
    ...(change.afterClose === undefined ? {} : { afterClose: change.afterClose }),
  };
}

/** Different texts of a column, in the order in which they first stand in the log. */
export function textsOf<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  column: ColumnId<Table>,
): readonly string[] {
  const texts = log.rows[table].flatMap(({ cells }) => cells[column] ?? []).map(String);
  return [...new Set(texts)];
}

type InitialsTable = "benchTests" | "readings" | "additions" | "loads" | "meterChecks" | "care" | "stockMoves";

/** Who did it: offers the shop's people, takes any initials. */
export function initialsField(log: LogSnapshot, table: InitialsTable): EntryField {
  return field(log, table, "initials", {
    required: false,
    isWho: true,
    suggestions: textsOf(log, "people", "initials"),
  });
}

/** Which meter: offers those that the log knows, takes any name. */
export function meterField(log: LogSnapshot, table: "readings" | "meterChecks"): EntryField {
  return field(log, table, "meter", { suggestions: metersOf(log) });
}

export function metersOf(log: LogSnapshot): readonly string[] {
  return [...new Set([...textsOf(log, "meterChecks", "meter"), ...textsOf(log, "readings", "meter")])];
}
