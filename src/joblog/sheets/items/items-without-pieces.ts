import { blankIf, when } from "../../formula/choices.ts";
import { isBlank, isNoNumber, isUnder } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Columns } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

/** The claim of a line whose pieces are missing or no number: no count has it. */
export const claimWithoutPieces: ComputedColumn = columnsOf<"items">().helper(
  {
    id: "uncounted",
    label: "Without pieces",
    type: "text",
    width: 11,
    help: "The claim, where the line's pieces are missing or no number; blank where they count.",
  },
  ({ claim, quantity }) =>
    blankIf([isBlank(claim)], when(isNoNumber(quantity), claim).when(isUnder(quantity, 0), claim).otherwise("")),
);

/** How many such lines a claim has. */
export const withoutPieces = (items: Columns<"items">, claim: Expression): Expression =>
  countWhere(items, { uncounted: claim });
