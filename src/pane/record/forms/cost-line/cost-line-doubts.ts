import { findRow, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { money } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

export function noCostProblems(filled: FilledFields<ColumnId<"costLines">>): readonly FieldProblem[] {
  return filled.number("amount") === 0
    ? [{ key: "amount", message: "Amount: 0.00 is no cost. A credit is negative." }]
    : [];
}

/** The same document twice is the commonest way to bill a cost twice. */
export function documentDoubts(filled: FilledFields<ColumnId<"costLines">>, { log }: LogContext): readonly string[] {
  const document = filled.text("document");
  const same = document === undefined ? undefined : findRow(log, "costLines", "document", document);
  return same === undefined
    ? []
    : [`Document ${document ?? ""} is on line ${String(same.cells.id ?? "")} already. Is this another cost of it?`];
}

/** Water that Additions price would be billed twice. */
export function pricedWaterDoubts(filled: FilledFields<ColumnId<"costLines">>, { log }: LogContext): readonly string[] {
  const bath = filled.text("bath");
  const isWater = filled.text("kind") === "water" || /\bwater\b/i.test(filled.text("what") ?? "");
  const priced =
    bath === undefined || !isWater
      ? 0
      : rowsOfBath(log, "additions", bath)
          .map(rowFacts)
          .filter((row) => row.text("kind") === "water")
          .reduce((sum, row) => sum + (row.number("cost") ?? 0), 0);
  return priced === 0
    ? []
    : [`Additions price the water of bath ${bath ?? ""} already, ${money(priced)}. Is this other water?`];
}
