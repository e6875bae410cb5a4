import type { NumberReading } from "./parse-number.ts";
import { parseNumber } from "./parse-number.ts";
import { plainText } from "./plain-text.ts";

/** $139, US$ 139, 139 €, CHF 139, $(139): the sign of a currency stands before the number or after it. */
const currency = String.raw`(?:(?:US|CA?|AU?|NZ) ?\$|\p{Sc}|USD|CAD|AUD|NZD|EUR|GBP|CHF)`;
const before = new RegExp(String.raw`^([-+(]?) ?${currency} ?(?=[-(\d.,])`, "iu");
const after = new RegExp(String.raw`(\d[.,]?) ?${currency}(\)?)$`, "iu");

/** The text of an amount of money without its currency; undefined where it names none. */
function withoutCurrency(text: string): string | undefined {
  const tidy = plainText(text);
  if (before.test(tidy)) return tidy.replace(before, "$1");
  return after.test(tidy) ? tidy.replace(after, "$1$2") : undefined;
}

/** Whether a text is an amount of money, such as "$139" or "139 €". */
export function isMoney(text: string): boolean {
  const amount = withoutCurrency(text);
  return amount !== undefined && parseNumber(amount).read !== "nothing";
}

/** Reads an amount of money, with a currency or without; which currency is the shop's to keep apart. */
export function parseMoney(text: string): NumberReading {
  return parseNumber(withoutCurrency(text) ?? text);
}
