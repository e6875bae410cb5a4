import type { CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";
import { answerCell } from "../../src/excel/functions/cell-boundary.ts";
import { CustomFunctionError, errorCodes } from "../../src/workbench/host/functions/custom-functions.ts";

export type Outcome =
  { readonly answer: CellValue | CellMatrix } | { readonly error: string; readonly message: string };

/** Freezes ranges and cell objects, so that whoever writes into an argument fails. */
export function frozen<Received>(received: Received): Received {
  if (typeof received !== "object" || received === null || Object.isFrozen(received)) return received;
  if (Array.isArray(received)) received.forEach(frozen);
  return Object.freeze(received);
}

/** Calls a function as Excel would; anything thrown but CustomFunctions.Error is thrown on. */
export function call(fn: WorksheetFunction, cells: readonly unknown[]): Outcome {
  Object.assign(globalThis, { CustomFunctions: { Error: CustomFunctionError, ErrorCode: errorCodes } });
  const invocation = { functionName: fn.id };
  try {
    return {
      answer: answerCell(fn, [
        ...cells.map((cell) => frozen(cell)),
        ...Array<undefined>(fn.arguments.length - cells.length).fill(undefined),
        invocation,
      ]),
    };
  } catch (error) {
    if (!(error instanceof CustomFunctionError)) throw error;
    return { error: error.code, message: error.message };
  }
}
