import type { NumberReading } from "./parse-number.ts";
import { parseNumber } from "./parse-number.ts";
import { plainText } from "./plain-text.ts";

/** $139, US$ 139, 139 €, CHF 139, ($139), $(139): the sign of a currency stands before the number or after it. */
const currency = String.raw`((?:US|CA?|AU?|NZ) ?\$|\p{Sc}|USD|CAD|AUD|NZD|EUR|GBP|CHF)`;
const before = new RegExp(String.raw`^([-+(]?) ?${currency} ?(?=[-(\d.,])`, "iu");
const after = new RegExp(String.raw`(\d[.,]?) ?${currency}(\)?)$`, "iu");
/** Bookkeeping programs write the minus after the number. */
const minusAfter = /^(\d[\d.,' ]*)-$/;

interface Amount {
  readonly number: string;
  /** As it was written, in capitals. */
  readonly sign: string;
}

/** The text of an amount of money and the currency that it names; undefined where it names none. */
function amountIn(text: string): Amount | undefined {
  const tidy = plainText(text);
  const found = before.exec(tidy) ?? after.exec(tidy);
  if (found === null) return undefined;
  const sign = (found[2] ?? "").replace(" ", "").toUpperCase();
  return found.index === 0 && before.test(tidy)
    ? { sign, number: tidy.replace(before, "$1") }
    : { sign, number: tidy.replace(after, "$1$3") };
}

/** Whether a text is an amount of money, such as "$139" or "139 €". */
export function isMoney(text: string): boolean {
  const amount = amountIn(text);
  return amount !== undefined && parseNumber(amount.number).read !== "nothing";
}

/** Reads an amount of money, with a currency or without; which currency is the shop's to keep apart. */
export function parseMoney(text: string): NumberReading {
  const number = amountIn(text)?.number ?? plainText(text);
  return parseNumber(number.replace(minusAfter, "-$1"));
}

const codeOfSign: Readonly<Record<string, string>> = {
  US$: "USD",
  C$: "CAD",
  CA$: "CAD",
  A$: "AUD",
  AU$: "AUD",
  NZ$: "NZD",
};

/** The sign that a currency shares with others, such as $; undefined for letters that name no currency. */
function signOf(code: string): string | undefined {
  if (!/^[A-Z]{3}$/.test(code)) return undefined;
  const words = new Intl.NumberFormat("en", { style: "currency", currency: code, currencyDisplay: "narrowSymbol" });
  return words.formatToParts(0).find(({ type }) => type === "currency")?.value;
}

/** The currency that an amount names where it cannot be the one with this ISO 4217 code: "€" of "12 €" among dollars. */
export function otherCurrency(text: string, code: string): string | undefined {
  const sign = amountIn(text)?.sign;
  const own = code.trim().toUpperCase();
  const ownSign = signOf(own);
  if (sign === undefined || ownSign === undefined) return undefined;
  return (codeOfSign[sign] ?? sign) === own || sign === ownSign ? undefined : sign;
}
