import type {
  Argument,
  CellInput,
  CellMatrix,
  CellValue,
  DefinedFunction,
  WorksheetFunction,
} from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { DomainError } from "../core/limits/domain-error.ts";

/** A live figure, or why there is none. */
export type Answer<Value> =
  { readonly known: true; readonly value: Value } | { readonly known: false; readonly why: string };

/** Cells for a worksheet function by its arguments' names; a cell that is not known may be left out or undefined. */
export type Given<Arguments extends readonly Argument<unknown>[]> = {
  readonly [Name in Arguments[number]["name"]]?: CellInput;
};

/** What a worksheet function gives for cells in the order of its definition. */
function answerInOrder(of: WorksheetFunction, cells: readonly CellInput[]): Answer<CellValue | CellMatrix> {
  try {
    return { known: true, value: evaluate(of, cells) };
  } catch (error) {
    if (error instanceof DomainError) return { known: false, why: error.message };
    throw error;
  }
}

/** What a worksheet function gives, whatever its shape; its arguments' order is the definition's. */
export function ask<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Given<Arguments>,
): Answer<CellValue | CellMatrix> {
  const cells: Readonly<Record<string, CellInput>> = given;
  return answerInOrder(
    of,
    of.arguments.map(({ name }) => cells[name]),
  );
}

/** The number that the function gives: what a cell with the same formula would show. */
export function askNumber<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Given<Arguments>,
): Answer<number> {
  const answer = ask(of, given);
  if (!answer.known) return answer;
  if (typeof answer.value === "number") return { known: true, value: answer.value };
  throw new TypeError(`${of.id} gave no number.`);
}

/** The words that the function gives. */
export function askText<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Given<Arguments>,
): Answer<string> {
  const answer = ask(of, given);
  if (!answer.known) return answer;
  if (typeof answer.value === "string") return { known: true, value: answer.value };
  throw new TypeError(`${of.id} gave no text.`);
}

/** The numbers of the first spilled row. */
export function askRow<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Given<Arguments>,
): Answer<readonly number[]> {
  const answer = ask(of, given);
  if (!answer.known) return answer;
  const row = Array.isArray(answer.value) ? answer.value[0] : undefined;
  if (row === undefined) throw new TypeError(`${of.id} spilled no row.`);
  return { known: true, value: row.filter((cell) => typeof cell === "number") };
}

/** The numbers of the first spilled column. */
export function askColumn<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Given<Arguments>,
): Answer<readonly number[]> {
  const answer = ask(of, given);
  if (!answer.known) return answer;
  if (!Array.isArray(answer.value)) throw new TypeError(`${of.id} spilled no rows.`);
  return { known: true, value: answer.value.flatMap(([cell]) => (typeof cell === "number" ? [cell] : [])) };
}
