import { joined, rounded, times } from "../../formula/arithmetic.ts";
import { above, type Comparison } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";

const minutesInDay = 1440;

/** One text for a meter and the minute of its check: a formula that finds the check's row again. */
export function checkKey(meter: Expression, when: Expression): Expression {
  return joined(meter, "|", rounded(times(when, minutesInDay), 0));
}

/** Picks the checks that say what error the meter was left with: a number, which is never that far below 0. */
export const saysErrorLeft: Comparison = above(-99);
