import { isMoney } from "./parse-money.ts";
import { plainText } from "./plain-text.ts";

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
  const sign = isMoney(text)
    ? plainText(text)
        .replace(/[^\p{L}\p{Sc}]/gu, "")
        .toUpperCase()
    : undefined;
  const own = code.trim().toUpperCase();
  const ownSign = signOf(own);
  if (sign === undefined || ownSign === undefined) return undefined;
  return (codeOfSign[sign] ?? sign) === own || sign === ownSign ? undefined : sign;
}
