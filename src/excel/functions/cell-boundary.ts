import { refuse } from "../../../functions/arguments/read-cell.ts";
import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../../functions/define-function.ts";
import { evaluate } from "../../../functions/evaluate.ts";
import { DomainError } from "../../core/limits/domain-error.ts";

/** Errors that a custom function may hand on; Excel knows #NAME?, #REF! and the rest as inputs only. */
const passedErrors = new Map<
  string,
  "invalidValue" | "notAvailable" | "divisionByZero" | "invalidNumber" | "nullReference"
>([
  ["#VALUE!", "invalidValue"],
  ["#N/A", "notAvailable"],
  ["#DIV/0!", "divisionByZero"],
  ["#NUM!", "invalidNumber"],
  ["#NULL!", "nullReference"],
]);

function passError(name: string, error: string): never {
  const code = passedErrors.get(error);
  if (code === undefined) refuse(name, `holds the error ${error}.`);
  // oxlint-disable-next-line typescript/only-throw-error -- the one class that Excel reads an error from
  throw new CustomFunctions.Error(CustomFunctions.ErrorCode[code]);
}

/**
 * What stands for a cell that is no plain value: a formatted number's value is in `basicValue`, an error's word
 * in `basicValue` or, as CustomFunctions.Error, in `code`. Entities and images have no plain value.
 */
function objectValue(name: string, cell: object): CellValue {
  if ("code" in cell && typeof cell.code === "string") return passError(name, cell.code);
  const { type, basicType, basicValue } = cell as {
    readonly type?: unknown;
    readonly basicType?: unknown;
    readonly basicValue?: unknown;
  };
  if (type === "Error") return passError(name, String(basicValue));
  const isPlain =
    basicType !== "Error" && (basicValue === null || ["number", "string", "boolean"].includes(typeof basicValue));
  return isPlain
    ? (basicValue as CellValue)
    : refuse(name, "is a cell without a plain number or text; point at one of its fields.");
}

function cellValue(name: string, received: unknown): CellValue {
  switch (typeof received) {
    case "number":
    case "string":
    case "boolean":
      return received;
    case "undefined":
      return null;
    case "object":
      return received === null ? null : objectValue(name, received);
    default:
      return refuse(name, "is a cell without a plain number or text.");
  }
}

function cellInput(name: string, received: unknown): CellInput {
  if (!Array.isArray(received)) return cellValue(name, received);
  const oneCell = (cell: unknown): CellValue => cellValue(name, cell);
  return received.map((row: unknown) => (Array.isArray(row) ? row.map(oneCell) : [oneCell(row)]));
}

/** `null` in a spill would show as 0. */
function toCells(result: CellValue | CellMatrix): CellValue | CellMatrix {
  return Array.isArray(result) ? result.map((row) => row.map((cell) => cell ?? "")) : (result ?? "");
}

/**
 * Answers one call from a cell. Excel adds an invocation object after the arguments; it is not read. An
 * error in an argument passes through.
 *
 * @throws CustomFunctions.Error, `#VALUE!` or `#N/A` with a message for the user, or the error of an argument
 */
export function answerCell(fn: WorksheetFunction, received: readonly unknown[]): CellValue | CellMatrix {
  try {
    return toCells(
      evaluate(
        fn,
        fn.arguments.map(({ name }, index) => cellInput(name, received[index])),
      ),
    );
  } catch (refusal) {
    if (!(refusal instanceof DomainError)) throw refusal;
    const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
    // oxlint-disable-next-line typescript/only-throw-error -- the one class that Excel reads a message from
    throw new CustomFunctions.Error(refusal.refusal === "no-answer" ? notAvailable : invalidValue, refusal.message);
  }
}
