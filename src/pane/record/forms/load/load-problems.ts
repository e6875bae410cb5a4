import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

/** A load without baskets or without time in the bath is none. */
export function zeroProblems(filled: FilledFields<ColumnId<"loads">>): readonly FieldProblem[] {
  const named = [
    ["baskets", "Baskets"],
    ["minutes", "In the bath"],
  ] as const;
  return named.flatMap(([key, label]) =>
    filled.number(key) === 0 ? [{ key, message: `${label}: 0 is no load. Allowed: more than 0.` }] : [],
  );
}
