import { dose } from "../../../functions/charge/dose.ts";
import { askNumber } from "../../advice/ask.ts";
import { figure } from "../../advice/wording/figures.ts";
import { parseNumber } from "../../core/units/parse-number.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { cellWords } from "./cell-words.ts";

export type StrengthCell =
  | {
      readonly text: string;
      /** A share that may have been meant as parts of water. */
      readonly doubt?: string;
    }
  | { readonly why: string };

/** A strength as the worksheet functions take one: they refuse the time that a spreadsheet makes of 1:40, and a bare 40. */
export function strengthOf(value: unknown, system: UnitSystem): StrengthCell {
  const text = cellWords(value);
  const number = parseNumber(text);
  const isBare = number.read === "number" && !text.includes("/");
  const rate = isBare ? number.value : text;
  const answer = askNumber(dose, { volume: 1, rate, system });
  if (!answer.known) return { why: answer.why };
  if (!isBare) return { text };
  const parts = 1 / number.value;
  const share = `${figure(100 * number.value, 4)}%`;
  return {
    text: share,
    doubt: `${text} is taken as ${share} of the finished bath, 1 in ${figure(parts, 2)}. If 1:${figure(parts, 2)} was meant, one part and ${figure(parts, 2)} of water, it is ${figure(100 / (parts + 1), 2)}%. Is it the share?`,
  };
}
