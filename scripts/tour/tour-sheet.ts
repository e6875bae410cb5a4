/**
 * The vocabulary of the function tour. A formula names cells of its own sheet by id, `[volume]`, cells
 * of another as `[tank.volume]`, and a whole list or one column of it by the list's or column's id.
 */

/** A cell to type in. */
export interface TourInput {
  readonly kind: "input";
  readonly id: string;
  readonly label: string;
  readonly value: string | number;
  readonly unit: string;
  readonly format: string;
  /** The words that the cell takes. */
  readonly choices?: readonly string[];
  readonly note?: string;
}

/** A formula, its text beside it, and what it answers: words, or a formula of words. */
export interface TourResult {
  readonly kind: "result";
  readonly id?: string;
  readonly answers: string;
  readonly formula: string;
  readonly unit: string;
  readonly format: string;
}

interface ListColumn {
  readonly id: string;
  readonly header: string;
  readonly format: string;
}

/** Rows to type in. */
export interface TourList {
  readonly kind: "list";
  readonly id: string;
  readonly columns: readonly ListColumn[];
  readonly rows: readonly (readonly (string | number)[])[];
}

interface GridColumn {
  /** Column of the spill, counted from 1 as in INDEX. */
  readonly spilled: number;
  /** Left out, the spill's first row is the head. */
  readonly header?: string;
  readonly format: string;
}

/** A spill, each cell by INDEX, since files hold no dynamic arrays here. */
export interface TourGrid {
  readonly kind: "grid";
  readonly formula: string;
  /** First and last row of the spill that are shown, counted from 1. */
  readonly rows: readonly [first: number, last: number];
  readonly columns: readonly GridColumn[];
}

export type TourPart = TourInput | TourResult | TourList | TourGrid;

export interface TourStep {
  readonly caption: string;
  readonly story: string;
  readonly parts: readonly TourPart[];
}

/** One family of functions at one hour of the day. */
export interface TourSheet {
  readonly id: string;
  /** The catalogue's category. */
  readonly name: string;
  readonly clock: string;
  readonly title: string;
  readonly story: string;
  readonly tabColor: string;
  readonly steps: readonly TourStep[];
}

/** Shows words, and numbers at the left of their cell. */
const words = "General";

/** Shows a number with the digits it has. */
const asGiven = "General;-General";

type Details = Partial<Pick<TourInput, "choices" | "note">> & { readonly format?: string };

/** A number to type. */
export function number(
  id: string,
  label: string,
  value: number,
  unit: string,
  { format = asGiven, ...details }: Details = {},
): TourInput {
  return { kind: "input", id, label, value, unit, format, ...details };
}

/** Words to type: kept as typed, so that "1:40" is no time of day. */
export function text(id: string, label: string, value: string, details: Details = {}): TourInput {
  return { kind: "input", id, label, value, unit: "", format: "@", ...details };
}

/** A result of the sheet. */
export function result(
  answers: string,
  formula: string,
  unit: string,
  format: string = words,
  id?: string,
): TourResult {
  return { kind: "result", answers, formula, unit, format, ...(id === undefined ? {} : { id }) };
}

/** Every formula of a sheet. */
export function formulasOf({ steps }: TourSheet): readonly string[] {
  return steps
    .flatMap(({ parts }) => parts)
    .flatMap((part) => {
      if (part.kind === "grid") return [part.formula];
      return part.kind === "result" ? [part.formula, part.answers].filter((one) => one.startsWith("=")) : [];
    });
}

/** Ids of the worksheet functions that a sheet uses, in its order, each once. */
export function functionsOf(sheet: TourSheet): readonly string[] {
  return [
    ...new Set(
      formulasOf(sheet).flatMap((formula) => [...formula.matchAll(/\bBATH\.([A-Z0-9]+)\(/g)].map(([, id = ""]) => id)),
    ),
  ];
}
