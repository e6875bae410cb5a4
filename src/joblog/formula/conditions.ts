import { apply, type Expression, operation, type Value } from "./expression.ts";

/** True or false, for `when`, `all`, `any` and `not`. */
export type Condition = Expression;

/** The cell holds nothing, or a formula's "". */
export const isBlank = (value: Expression): Condition => operation(value, "=", "");

export const isFilled = (value: Expression): Condition => operation(value, "<>", "");

export const isNumber = (value: Expression): Condition => apply("ISNUMBER", value);

/** A blank, a word or a failed formula. */
export const isNoNumber = (value: Expression): Condition => apply("NOT", isNumber(value));

/** One of the words that the cell can hold. */
export const is = <Word extends string>(value: Expression<Word>, word: NoInfer<Word>): Condition =>
  operation(value, "=", word);

export const isNot = <Word extends string>(value: Expression<Word>, word: NoInfer<Word>): Condition =>
  operation(value, "<>", word);

export const equal = (left: Value, right: Value): Condition => operation(left, "=", right);

export const unequal = (left: Value, right: Value): Condition => operation(left, "<>", right);

export const isOver = (value: Value, limit: Value): Condition => operation(value, ">", limit);

export const isUnder = (value: Value, limit: Value): Condition => operation(value, "<", limit);

export const isAtLeast = (value: Value, limit: Value): Condition => operation(value, ">=", limit);

export const isAtMost = (value: Value, limit: Value): Condition => operation(value, "<=", limit);

export const startsWith = (value: Expression, beginning: string): Condition =>
  equal(apply("LEFT", value, beginning.length), beginning);

export const all = (...conditions: readonly Condition[]): Condition => apply("AND", ...conditions);

export const any = (...conditions: readonly Condition[]): Condition => apply("OR", ...conditions);

/** Anywhere in it, in capitals or not. */
export const holds = (text: Value, part: Value): Condition => isNumber(apply("SEARCH", part, text));
