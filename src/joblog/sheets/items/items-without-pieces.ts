import { minus } from "../../formula/arithmetic.ts";
import { atLeast, countWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Columns } from "../../formula/log-names.ts";

/** Lines of a claim whose pieces are missing or no number: no count has them. */
export const withoutPieces = (items: Columns<"items">, claim: Expression): Expression =>
  minus(countWhere(items, { claim }), countWhere(items, { claim, quantity: atLeast(0) }));
