/** One row of the log that is put right: what it holds, what it is to hold. */
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import { dayWords, fieldTextOf, momentWords, serialOf } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { TableId } from "../../../../joblog/formula/log-types.ts";
import type { RowValue } from "../../../../joblog/model/definition.ts";
import type { AnyRow } from "../../../../joblog/model/log-snapshot.ts";
import type { Draft, EntryField } from "../../entry-form.ts";
import { describedColumn, inputColumns } from "../../fields-of.ts";
import type { ChosenRow } from "./correction-rows.ts";

export interface Correction {
  readonly table: TableId;
  readonly row: AnyRow;
  /** The row as it will stand, by column. */
  readonly filled: FilledFields<string>;
  /** Columns whose text is no longer that of the log. */
  readonly changed: readonly string[];
}

/** Digits enough to give back what any cell of the log holds. */
const digits = 6;

/** What a cell holds, as a person would type it. */
export function heldText(table: TableId, id: string, value: RowValue | undefined): string {
  if (value === undefined) return "";
  if (typeof value !== "number") return String(value);
  const { type } = describedColumn(table, id);
  if (type === "date") return fieldTextOf(value).slice(0, 10);
  return type === "date and time" ? fieldTextOf(value) : figure(value, digits);
}

/** The same as it is noted in the row: a date-time field wants a T between day and hour. */
export const notedText = (table: TableId, id: string, value: RowValue | undefined): string =>
  heldText(table, id, value).replace(/^(\d{4}-\d\d-\d\d)T(?=\d\d:\d\d$)/, "$1 ");

/** A field's text as a person reads it: dates in words, all else as it stands. */
export function spokenText(table: TableId, id: string, text: string): string {
  const { type } = describedColumn(table, id);
  const time = type.startsWith("date") ? serialOf(text) : undefined;
  if (time === undefined) return text;
  return type === "date" ? dayWords(time) : momentWords(time);
}

/** A field's key bears its row, so that what was typed for one row is never written to another. */
export const correctionKey = ({ table, row }: ChosenRow, id: string): string =>
  `${table} ${String(row.position)} ${id}`;

export const correctionLabel = (table: TableId, id: string): string => describedColumn(table, id).label;

/** What the meter showed is never overwritten: a drift is taken out beside it, a misreading gets another reading. */
const asRead: { readonly [Table in TableId]?: ColumnId<Table> } = { readings: "ph" };

/** Columns of a row that may change: not its key, by which other rows and receipts find it, and no pH as read. */
export const correctedIds = (table: TableId): readonly string[] =>
  inputColumns(table)
    .slice(1)
    .filter(({ ofCells }) => ofCells !== true)
    .map(({ id }) => id)
    .filter((id) => id !== asRead[table]);

/** Columns that are typed otherwise than the log holds them. */
export const changedIds = (chosen: ChosenRow, values: Draft): readonly string[] =>
  correctedIds(chosen.table).filter(
    (id) => (values[correctionKey(chosen, id)] ?? "").trim() !== heldText(chosen.table, id, chosen.row.cells[id]),
  );

export function correctionOf(chosen: ChosenRow, filled: FilledFields<string>, values: Draft): Correction {
  const { table, row } = chosen;
  return {
    table,
    row,
    filled: {
      number: (id) => filled.number(correctionKey(chosen, id)),
      text: (id) => filled.text(correctionKey(chosen, id)),
    },
    changed: changedIds(chosen, values),
  };
}

/** A row taken over from another sheet may hold what a form would not: only what changes has to be right. */
export function asHeld(field: EntryField, held: RowValue | undefined): EntryField {
  const required = field.required && held !== undefined;
  const choices =
    field.choices === undefined || held === undefined ? field.choices : [...new Set([...field.choices, String(held)])];
  return { ...field, required, anyTime: true, ...(choices === undefined ? {} : { choices }) };
}
