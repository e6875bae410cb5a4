import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

export function noMoveProblems(filled: FilledFields<ColumnId<"stockMoves">>): readonly FieldProblem[] {
  return filled.number("amount") === 0 && filled.text("kind") !== "count"
    ? [{ key: "amount", message: "Amount: 0 moves nothing. Only a count can be 0." }]
    : [];
}
