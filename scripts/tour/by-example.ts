import type { FunctionExample, WorksheetFunction } from "../../functions/define-function.ts";
import { functionsOf, result, type TourPart, type TourSheet, type TourStep } from "./tour-sheet.ts";

/** The columns that a table of the tour has beside its formula. */
const mostColumns = 4;

/** The example as the help shows it; of a spill the whole height and the first columns. */
function partOf({ id, result: gives }: WorksheetFunction, { formula, result: answer }: FunctionExample): TourPart {
  if (!Array.isArray(answer)) return result(`BATH.${id} gives ${gives.help}`, formula, gives.unit ?? "");
  const columns = Math.min(answer[0]?.length ?? 0, mostColumns);
  return {
    kind: "grid",
    formula,
    rows: [1, answer.length],
    columns: Array.from({ length: columns }, (_, index) => ({ spilled: index + 1, header: "", format: "General" })),
  };
}

function stepOf(fn: WorksheetFunction): TourStep {
  return {
    caption: `The example of BATH.${fn.id}`,
    story: fn.summary,
    parts: fn.examples.slice(0, 1).map((example) => partOf(fn, example)),
  };
}

/** The sheets, and on each the first example of every function of its family that no step of it uses. */
export function withExamples(
  sheets: readonly TourSheet[],
  functions: readonly WorksheetFunction[],
): readonly TourSheet[] {
  return sheets.map((sheet) => {
    const used = functionsOf(sheet);
    const others = functions.filter(({ id, category }) => category === sheet.name && !used.includes(id));
    return { ...sheet, steps: [...sheet.steps, ...others.map(stepOf)] };
  });
}
