import type { CellFormulaValue, CellValue } from "@cj-tech-master/excelts";

import type { CellPlan } from "../joblog/model/plan.ts";

/** What a formula's cell showed when the plan was worked out. */
export type KnownValue = string | number | boolean | { readonly error: string };

/** Values of formula cells, rows and columns counted from 0. */
export type ValueOf = (sheet: string, row: number, column: number) => KnownValue | undefined;

const errorNames = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!", "#SPILL!", "#CALC!"] as const;

type ErrorName = (typeof errorNames)[number];

/** Whether a file can hold an error of this word. */
export function isKnownError(text: string): text is ErrorName {
  return errorNames.some((name) => name === text);
}

function resultOf(known: KnownValue, place: string): NonNullable<CellFormulaValue["result"]> {
  if (typeof known !== "object") return known;
  if (!isKnownError(known.error))
    throw new RangeError(`"${known.error}" at ${place} is no error that a file can hold.`);
  return { error: known.error };
}

/**
 * The cell as the file library takes it. Throws a RangeError where a formula has no known value: a
 * file without values shows nothing to a person without the add-in. `stored` gives the formula as files spell it.
 */
export function fileValue(
  cell: CellPlan,
  sheet: string,
  valueOf: ValueOf,
  stored: (formula: string) => string,
): CellValue {
  switch (cell.kind) {
    case "blank":
      return null;
    case "value":
      return cell.value;
    case "formula": {
      const place = `${sheet}, row ${String(cell.row + 1)}, column ${String(cell.column + 1)}`;
      const known = valueOf(sheet, cell.row, cell.column);
      if (known === undefined) throw new RangeError(`The formula at ${place} has no value to store beside it.`);
      return { formula: stored(cell.formula), result: resultOf(known, place) };
    }
  }
}
