import { dividedBy, plus, wholePart } from "./arithmetic.ts";
import type { Expression } from "./expression.ts";

/**
 * The median of so many values, without array formulas: the k-th lowest is the highest of those that have
 * fewer than k below them, and ties do no harm.
 */
export function medianOf(count: Expression, kthLowest: (k: Expression) => Expression): Expression {
  const lower = kthLowest(wholePart(dividedBy(plus(count, 1), 2)));
  const upper = kthLowest(plus(wholePart(dividedBy(count, 2)), 1));
  return dividedBy(plus(lower, upper), 2);
}
