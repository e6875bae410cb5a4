import type { Value } from "../formula/expression.ts";
import type { ColumnId, Log, Row } from "../formula/log-names.ts";
import type { TableId } from "../formula/log-types.ts";
import type { ChoiceSource, ComputedColumn, InputColumn, LimitsOf, UnitOf } from "./definition.ts";

type Common = Pick<InputColumn, "id" | "label" | "width" | "help">;

interface Quantity extends Common {
  readonly unit?: UnitOf;
  readonly limits: LimitsOf;
  readonly format: string;
  readonly required?: boolean;
}

interface Typed extends Common {
  readonly required?: boolean;
}

export function textInput({ required = false, ...rest }: Typed): InputColumn {
  return { role: "input", type: "text", required, ...rest };
}

/** A text by which other rows find this one. */
export function nameInput(rest: Common): InputColumn {
  return { ...textInput({ ...rest, required: true }), key: true };
}

export function numberInput({ required = false, ...rest }: Quantity): InputColumn {
  return { role: "input", type: "number", required, ...rest };
}

export function moneyInput({ required = false, ...rest }: Typed & { readonly limits: LimitsOf }): InputColumn {
  return { role: "input", type: "money", required, ...rest };
}

export function dateInput({ required = false, ...rest }: Typed): InputColumn {
  return { role: "input", type: "date", required, ...rest };
}

export function momentInput({ required = false, ...rest }: Typed): InputColumn {
  return { role: "input", type: "date and time", required, ...rest };
}

/** A choice from words of our own. */
export function wordInput({
  required = false,
  words,
  ...rest
}: Typed & { readonly words: readonly string[] }): InputColumn {
  const choices: ChoiceSource = { kind: "fixed", choices: words };
  return { role: "input", type: "choice", required, choices, ...rest };
}

/** A column by which rows are found. */
type KeyColumn = { readonly [Table in TableId]: readonly [Table, ColumnId<Table>] }[TableId];

/** A choice from a column of the log. */
export function keyInput({ required = false, from, ...rest }: Typed & { readonly from: KeyColumn }): InputColumn {
  const choices: ChoiceSource = { kind: "column", table: from[0], column: from[1] };
  return { role: "input", type: "choice", required, choices, ...rest };
}

type Computed = Common & Pick<ComputedColumn, "type" | "format" | "unit" | "words">;

interface ColumnsOf<Table extends TableId> {
  readonly computed: (rest: Computed, formula: (row: Row<Table>, log: Log) => Value) => ComputedColumn;
  /** A computed column that only formulas, charts or formats look at. */
  readonly helper: (rest: Computed, formula: (row: Row<Table>, log: Log) => Value) => ComputedColumn;
}

/** Makers of the computed columns of a table: their formulas know its columns and those of every other table by id. */
export function columnsOf<Table extends TableId>(): ColumnsOf<Table> {
  const column = (rest: Computed, formula: (row: Row<Table>, log: Log) => Value): ComputedColumn => ({
    role: "computed",
    ...rest,
    // A row's cells are made from the same table that the types are written from.
    formula: (row, log) => formula(row as Row<Table>, log),
  });
  return { computed: column, helper: (rest, formula) => ({ ...column(rest, formula), helper: true }) };
}
