import { dividedBy, plus, wholePart } from "./arithmetic.ts";
import type { Expression } from "./expression.ts";

/** Which of so many values, from the lowest, stand in the middle: one and the same where their count is odd. */
export const middleRanks = (count: Expression) => ({
  lower: wholePart(dividedBy(plus(count, 1), 2)),
  upper: plus(wholePart(dividedBy(count, 2)), 1),
});

/**
 * The median of values with these ranks in the middle, without array formulas: the k-th lowest is the highest of those
 * that have fewer than k below them, and ties do no harm.
 */
export function medianOf(
  { lower, upper }: Readonly<Record<"lower" | "upper", Expression>>,
  kthLowest: (k: Expression) => Expression,
): Expression {
  return dividedBy(plus(kthLowest(lower), kthLowest(upper)), 2);
}
