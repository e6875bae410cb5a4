import { apply, type Expression } from "../../formula/expression.ts";
import { betweenWords, mark } from "./keep-out-words.ts";

export const without = (text: Expression, parts: readonly string[]): Expression =>
  parts.reduce<Expression>((rest, part) => apply("SUBSTITUTE", rest, part, mark), text);

/** A text in small letters, its words between marks. */
export const betweenMarks = (text: Expression): Expression => without(apply("LOWER", text), betweenWords);
