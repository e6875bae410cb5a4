import { DomainError } from "../src/core/domain-error.ts";
import { OutOfRange } from "../src/core/domain.ts";
import { system as systemArgument } from "./arguments.ts";
import { outOfRangeMessage } from "./wording.ts";
import type { CallContext, CellInput, CellMatrix, CellValue, WorksheetFunction } from "./define-function.ts";

function contextOf(fn: WorksheetFunction, cells: readonly CellInput[]): CallContext {
  const index = fn.arguments.findIndex((argument) => argument.name === systemArgument.name);
  return { system: index < 0 ? "US" : systemArgument.read(cells[index], { system: "US" }) };
}

function isSound(value: CellValue): boolean {
  return typeof value !== "number" || Number.isFinite(value);
}

/**
 * Runs a worksheet function on cells, the same way for a cell in Excel and for the pane.
 *
 * @returns a finite number, text or truth value, or rows of these
 * @throws DomainError with a message for the user, in the user's units
 */
export function evaluate(fn: WorksheetFunction, cells: readonly CellInput[]): CellValue | CellMatrix {
  const call = contextOf(fn, cells);
  try {
    const values = fn.arguments.map((argument, index) => argument.read(cells[index], call));
    const result = fn.compute(values, call);
    const sound = Array.isArray(result) ? result.every((row) => row.every(isSound)) : isSound(result);
    if (!sound) throw new DomainError("invalid", "The numbers given are too large or too small to calculate with.");
    return result;
  } catch (refusal) {
    if (refusal instanceof OutOfRange) throw new DomainError("invalid", outOfRangeMessage(refusal, call.system));
    throw refusal;
  }
}
