import type { Argument, CellInput, CellMatrix, CellValue } from "../define-function.ts";
import { cellsOf } from "./list-arguments.ts";
import { isBlank, isBlankOrZero, isHeader, numberFrom } from "./read-cell.ts";
import { oneOfThe } from "./wording.ts";

/** Weights in reading order, and how to put one result per weight back into the range's shape. */
export interface Weights {
  /** Blank and 0 weigh nothing, and so does a header on top. */
  readonly values: readonly number[];
  readonly arrange: (results: readonly number[]) => CellMatrix;
}

function weightOf(name: string, cell: CellValue, row: number): number {
  return isBlankOrZero(cell) || isHeader(cell, row) ? 0 : numberFrom(oneOfThe(name), cell);
}

function read(name: string, input: CellInput): Weights {
  const cells = cellsOf(name, input);
  const isColumn = Array.isArray(input) && input.length > 1;
  return {
    values: cells.map((cell, row) => weightOf(name, cell, row)),
    arrange: (results) => {
      const isUsed = (cell: CellValue, row: number): boolean => isBlank(cell) || !isHeader(cell, row);
      const shown = results.map((result, row) => (isUsed(cells[row] ?? null, row) ? result : ""));
      return isColumn ? shown.map((cell) => [cell]) : [shown];
    },
  };
}

/** One column or row of weights; blanks and a header on top are skipped. */
export function weights<const Name extends string>(name: Name, help: string): Argument<Weights, Name> {
  return {
    name,
    help,
    excelType: "any",
    dimensionality: "matrix",
    optional: false,
    read: (input) => read(name, input),
  };
}
