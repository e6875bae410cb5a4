import { dividedBy, plus } from "./arithmetic.ts";
import { type Condition, isAtMost, isOver } from "./conditions.ts";
import type { Expression } from "./expression.ts";

/**
 * Date-times compared inside COUNTIFS and its kin pass through text of 15 digits, so "at the same
 * time" allows half a minute.
 */
export const halfMinute = dividedBy(1, 2880);

/** Serial number of 31 December 9999, Excel's last day: a time that never comes. */
export const never = 2_958_465;

export const isAfter = (time: Expression, other: Expression): Condition => isOver(time, plus(other, halfMinute));

/** At that time or earlier. */
export const isUpTo = (time: Expression, other: Expression): Condition => isAtMost(time, plus(other, halfMinute));
