import { apply, type Expression, nodeOf, operation, type Operator, type Value } from "./expression.ts";

const inARow =
  (operator: Operator) =>
  (first: Value, ...more: readonly Value[]): Expression =>
    more.reduce<Expression>((left, right) => operation(left, operator, right), nodeOf(first));

export const plus = inARow("+");

export const minus = inARow("-");

export const times = inARow("*");

export const dividedBy = inARow("/");

/** Texts and figures as one text. */
export const joined = inARow("&");

/** What a formula makes of a cell as text; a blank becomes "". */
export const asText = (value: Value): Expression => joined(value, "");

export const rounded = (value: Value, digits: number): Expression => apply("ROUND", value, digits);

export const wholePart = (value: Value): Expression => apply("INT", value);

export const absolute = (value: Value): Expression => apply("ABS", value);

/** Cells without a number count for nothing. */
export const sum = (...values: readonly Value[]): Expression => apply("SUM", ...values);

export const smallest = (...values: readonly Value[]): Expression => apply("MIN", ...values);

export const largest = (...values: readonly Value[]): Expression => apply("MAX", ...values);

/** How many of them are numbers. */
export const countOfNumbers = (...values: readonly Value[]): Expression => apply("COUNT", ...values);

/** A chart leaves a gap where it meets it. */
export const notAvailable: Expression = apply("NA");

/** Half a cent stays half a cent in every unit of volume: what a conversion or a binary fraction leaves short is less than this many decimals show. */
export const toTheCent = (value: Value): Expression => rounded(rounded(value, 6), 2);

/** The same figure below zero: Excel takes what is left out before a minus sign for 0. */
export const negative = (value: Value): Expression => operation({ kind: "nothing" }, "-", value);
