import { negative, times } from "./arithmetic.ts";
import type { Condition } from "./conditions.ts";
import { apply, type Column, type Expression } from "./expression.ts";

/*
 * Conditions on whole columns, row by row. AND and OR would make one answer of all rows; true and
 * false reckoned with as 1 and 0 keep one for each.
 */

export const bothHold = (one: Condition, other: Condition): Condition => times(one, other);

/** 1 where it holds, 0 where it does not: SUMPRODUCT passes over true and false. */
const asOneOrZero = (condition: Condition): Expression => negative(negative(condition));

/** In how many rows it holds. */
export const countOfRows = (condition: Condition): Expression => apply("SUMPRODUCT", asOneOrZero(condition));

/** What a column adds up to in the rows that it holds for. */
export const sumOfRows = (column: Column, condition: Condition): Expression =>
  apply("SUMPRODUCT", asOneOrZero(condition), column);
