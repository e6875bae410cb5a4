import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { DomainError } from "../core/limits/domain-error.ts";

/** A live figure, or why there is none. */
export type Answer<Value> =
  { readonly known: true; readonly value: Value } | { readonly known: false; readonly why: string };

/** What one worksheet function gives for these cells. Only what it needs itself comes along, not the whole catalogue. */
export function answerOf(definition: WorksheetFunction, cells: readonly CellInput[]): Answer<CellValue | CellMatrix> {
  try {
    return { known: true, value: evaluate(definition, cells) };
  } catch (error) {
    if (error instanceof DomainError) return { known: false, why: error.message };
    throw error;
  }
}

/** @throws TypeError for a known answer that is no number */
export function numberOf(answer: Answer<CellValue | CellMatrix>): Answer<number> {
  if (!answer.known || typeof answer.value === "number") return answer as Answer<number>;
  throw new TypeError("A worksheet function gave no number.");
}
