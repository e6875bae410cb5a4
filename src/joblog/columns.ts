import type { ChoiceSource, ComputedColumn, InputColumn, LimitsOf, References, TableId, UnitOf } from "./definition.ts";

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
export function wordInput({ required = false, words, ...rest }: Typed & { readonly words: readonly string[] }): InputColumn {
  const choices: ChoiceSource = { kind: "fixed", choices: words };
  return { role: "input", type: "choice", required, choices, ...rest };
}

/** A choice from a column of the log. */
export function keyInput({ required = false, from, ...rest }: Typed & { readonly from: readonly [TableId, string] }): InputColumn {
  const choices: ChoiceSource = { kind: "column", table: from[0], column: from[1] };
  return { role: "input", type: "choice", required, choices, ...rest };
}

type Computed = Common & Pick<ComputedColumn, "type" | "format" | "unit">;

/** A formula without its "="; every computed cell of the log starts with one. */
export function computed(rest: Computed, formula: (reference: References) => string): ComputedColumn {
  return { role: "computed", ...rest, formula: (reference) => `=${formula(reference)}` };
}

/** A computed column that only formulas, charts or formats look at. */
export function helper(rest: Computed, formula: (reference: References) => string): ComputedColumn {
  return { ...computed(rest, formula), helper: true };
}
