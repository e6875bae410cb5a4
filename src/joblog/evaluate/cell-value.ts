import type { RowValue } from "../model/definition.ts";

/** Why a cell shows no value: Excel's code, and the sentence of the function that refused. */
export class CellError {
  constructor(
    readonly code: string,
    readonly why: string = code,
  ) {}
}

/** What one cell or expression comes to; `null` is a blank cell. */
export type Scalar = string | number | boolean | null | CellError;

/** The cells of a column, or of a row of cells, in order. */
export class Area {
  constructor(readonly cells: readonly Scalar[]) {}
}

/** What a function of ours spilled, row by row. */
export class Spill {
  constructor(readonly rows: readonly (readonly Scalar[])[]) {}
}

export type Result = Scalar | Area | Spill;

export const isError = (value: Result): value is CellError => value instanceof CellError;

/** One value of a result: its first cell. */
export function scalarOf(result: Result): Scalar {
  if (result instanceof Area) return result.cells[0] ?? null;
  if (result instanceof Spill) return result.rows[0]?.[0] ?? null;
  return result;
}

/** As Excel reckons with it: a blank counts as 0, a number written as text as that number. */
export function numberFrom(value: Scalar): number | CellError {
  if (value instanceof CellError) return value;
  if (value === null) return 0;
  if (typeof value === "string") {
    const number = value.trim() === "" ? Number.NaN : Number(value);
    return Number.isNaN(number) ? new CellError("#VALUE!") : number;
  }
  return Number(value);
}

/** As `&` joins it: at most 15 digits, a blank as nothing. */
export function textFrom(value: Scalar): string | CellError {
  if (value instanceof CellError) return value;
  if (value === null) return "";
  if (typeof value === "boolean") return String(value).toUpperCase();
  return typeof value === "number" ? String(Number(value.toPrecision(15))) : value;
}

/** As IF, AND and OR take a condition. */
export function truthOf(value: Scalar): boolean | CellError {
  if (value instanceof CellError) return value;
  if (typeof value === "string") return new CellError("#VALUE!");
  return Boolean(value);
}

/** What a worked-out cell would be read as: a blank one not at all, an error by its code. */
export function asShown(value: Scalar | undefined): RowValue | undefined {
  if (value instanceof CellError) return value.code;
  return value === null || value === "" ? undefined : value;
}
