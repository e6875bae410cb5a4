import { apply, type Expression } from "../../formula/expression.ts";
import { betweenWords } from "./keep-out-words.ts";

export const without = (text: Expression, parts: readonly string[]): Expression =>
  parts.reduce<Expression>((rest, part) => apply("SUBSTITUTE", rest, part, " "), text);

/** A text in small letters, its words between blanks alone. */
export const aloneInBlanks = (text: Expression): Expression => without(apply("LOWER", text), betweenWords);
