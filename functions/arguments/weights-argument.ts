import type { Argument, CellInput, CellMatrix, CellValue } from "../define-function.ts";
import { cellsOf } from "./list-arguments.ts";
import { isBlank, isBlankOrZero, isHeader, numberFrom } from "./read-cell.ts";

/** Weights in reading order, and how to put one result per weight back into the range's shape. */
export interface Weights {
  /** Blank, 0 and header cells weigh nothing. */
  readonly values: readonly number[];
  readonly arrange: (results: readonly number[]) => CellMatrix;
}

function weightOf(name: string, cell: CellValue): number {
  return isBlankOrZero(cell) || isHeader(cell) ? 0 : numberFrom(name, cell);
}

function read(name: string, input: CellInput): Weights {
  const cells = cellsOf(name, input);
  const isColumn = Array.isArray(input) && input.length > 1;
  return {
    values: cells.map((cell) => weightOf(name, cell)),
    arrange: (results) => {
      const isUsed = (cell: CellValue): boolean => isBlank(cell) || !isHeader(cell);
      const shown = results.map((result, index) => (isUsed(cells[index] ?? null) ? result : ""));
      return isColumn ? shown.map((cell) => [cell]) : [shown];
    },
  };
}

/** One column or row of weights; blanks and text headers are skipped. */
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
