import type { CellInput, CellMatrix, CellValue } from "../../functions/define-function.ts";
import { findFunction } from "../../functions/find-function.ts";
import { type Answer, answerOf, numberOf } from "./answer.ts";

/** What the worksheet function gives for these cells, whatever its shape. */
export function ask(id: string, ...cells: readonly CellInput[]): Answer<CellValue | CellMatrix> {
  const definition = findFunction(id);
  if (definition === undefined) throw new RangeError(`There is no function ${id}.`);
  return answerOf(definition, cells);
}

/** The number that the worksheet function gives for these cells: what a cell with the same formula would show. */
export function askNumber(id: string, ...cells: readonly CellInput[]): Answer<number> {
  return numberOf(ask(id, ...cells));
}

/** The words that the worksheet function gives. */
export function askText(id: string, ...cells: readonly CellInput[]): Answer<string> {
  const answer = ask(id, ...cells);
  if (!answer.known || typeof answer.value === "string") return answer as Answer<string>;
  throw new TypeError(`${id} gave no text.`);
}

/** The numbers of the first spilled row. */
export function askRow(id: string, ...cells: readonly CellInput[]): Answer<readonly number[]> {
  const answer = ask(id, ...cells);
  if (!answer.known) return answer;
  const row = Array.isArray(answer.value) ? answer.value[0] : undefined;
  if (row === undefined) throw new TypeError(`${id} spilled no row.`);
  return { known: true, value: row.filter((cell) => typeof cell === "number") };
}

/** The numbers of the first spilled column. */
export function askColumn(id: string, ...cells: readonly CellInput[]): Answer<readonly number[]> {
  const answer = ask(id, ...cells);
  if (!answer.known) return answer;
  if (!Array.isArray(answer.value)) throw new TypeError(`${id} spilled no rows.`);
  return { known: true, value: answer.value.flatMap(([cell]) => (typeof cell === "number" ? [cell] : [])) };
}

/** The truth value that the worksheet function gives. */
export function askTruth(id: string, ...cells: readonly CellInput[]): Answer<boolean> {
  const answer = ask(id, ...cells);
  if (!answer.known || typeof answer.value === "boolean") return answer as Answer<boolean>;
  throw new TypeError(`${id} gave no truth value.`);
}
