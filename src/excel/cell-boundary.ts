import { DomainError } from "../core/domain-error.ts";
import { evaluate } from "../../functions/evaluate.ts";
import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";

/** Excel may hand over a formatted number or other cell object; its plain value is in `basicValue`. */
function cellValue(received: unknown): CellValue {
  switch (typeof received) {
    case "number":
    case "string":
    case "boolean":
      return received;
    case "object":
      return received !== null && "basicValue" in received ? cellValue(received.basicValue) : null;
    default:
      return null;
  }
}

function cellInput(received: unknown): CellInput {
  if (!Array.isArray(received)) return cellValue(received);
  return received.map((row: unknown) => (Array.isArray(row) ? row.map(cellValue) : [cellValue(row)]));
}

/** `null` in a spill would show as 0. */
function leaving(result: CellValue | CellMatrix): CellValue | CellMatrix {
  return Array.isArray(result) ? result.map((row) => row.map((cell) => cell ?? "")) : (result ?? "");
}

/**
 * Answers one call from a cell. Excel adds an invocation object after the arguments; it is cut off.
 *
 * @throws CustomFunctions.Error, `#VALUE!` or `#N/A` with a message for the user
 */
export function answerCell(fn: WorksheetFunction, received: readonly unknown[]): CellValue | CellMatrix {
  try {
    return leaving(evaluate(fn, received.slice(0, fn.arguments.length).map(cellInput)));
  } catch (refusal) {
    if (!(refusal instanceof DomainError)) throw refusal;
    const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
    // eslint-disable-next-line @typescript-eslint/only-throw-error -- the one class that Excel reads a message from
    throw new CustomFunctions.Error(refusal.refusal === "no-answer" ? notAvailable : invalidValue, refusal.message);
  }
}
