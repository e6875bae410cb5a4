import { cellsOf } from "./list-arguments.ts";
import { isBlankOrZero, numberFrom } from "./read-cell.ts";
import type { Argument, CellInput, CellMatrix, CellValue } from "./define-function.ts";

/** Weights in reading order, and how to put one result per weight back into the range's shape. */
export interface Weights {
  /** Blank, 0 and header cells weigh nothing. */
  readonly values: readonly number[];
  readonly arrange: (results: readonly number[]) => CellMatrix;
}

function isHeader(cell: CellValue): boolean {
  return typeof cell === "string" && cell.trim() !== "" && !/\d/.test(cell);
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
      const shown = results.map((result, index) => (isHeader(cells[index] ?? null) ? "" : result));
      return isColumn ? shown.map((cell) => [cell]) : [shown];
    },
  };
}

/** One column or row of weights; blanks and text headers are skipped. */
export function weights(name: string, help: string): Argument<Weights> {
  return { name, help, excelType: "any", dimensionality: "matrix", optional: false, read: (input) => read(name, input) };
}
