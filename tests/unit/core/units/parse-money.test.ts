import { describe, expect, test } from "vitest";

import { otherCurrency } from "../../../../src/core/units/other-currency.ts";
import { isMoney, parseMoney } from "../../../../src/core/units/parse-money.ts";

describe("an amount of money", () => {
  test.each([
    ["$4.50", 4.5],
    ["€ 12,50", 12.5],
    ["4,50 €", 4.5],
    ["12.50 USD", 12.5],
    ["US$ 12.50", 12.5],
    ["1.234,50 €", 1234.5],
    ["$1,234.50", 1234.5],
    ["(12.50)", -12.5],
    ["($12.50)", -12.5],
    ["$(12.50)", -12.5],
    ["(12,50 €)", -12.5],
    ["-$4.50", -4.5],
    ["$-4.50", -4.5],
    ["4.5", 4.5],
  ])("%s is read with its sign", (text, value) => {
    expect(parseMoney(text)).toEqual({ read: "number", value });
  });

  test.each(["$", "$-", "free", "12.50 CR", "$12 each", "12-13", "12.50-", "--12", "((12))", ""])(
    "%s is none",
    (text) => {
      expect(parseMoney(text)).toEqual({ read: "nothing" });
    },
  );

  test("with a comma that can be either stays open", () => {
    expect(parseMoney("1,234 $")).toEqual({ read: "ambiguous", readings: [1.234, 1234] });
  });

  test("is told from a number", () => {
    expect([isMoney("$139"), isMoney("139"), isMoney("$x")]).toEqual([true, false, false]);
  });
});

// The signs of the codes are CLDR's, as Intl has them; the codes are ISO 4217's.
describe("the currency of an amount", () => {
  test.each([
    ["$4", "USD"],
    ["$4", "cad"],
    ["US$ 4", "USD"],
    ["4 CAD", "CAD"],
    ["4 €", "EUR"],
    ["4 EUR", "EUR"],
    ["£4", "GBP"],
    ["4", "USD"],
    ["(4)", "EUR"],
  ])("%s goes with %s", (text, code) => {
    expect(otherCurrency(text, code)).toBeUndefined();
  });

  test.each([
    ["4 €", "USD", "€"],
    ["$4", "EUR", "$"],
    ["4 chf", "EUR", "CHF"],
    ["C$ 4", "USD", "C$"],
    ["US$4", "CAD", "US$"],
    ["(£4)", "USD", "£"],
  ])("%s does not go with %s", (text, code, sign) => {
    expect(otherCurrency(text, code)).toBe(sign);
  });

  test("cannot be held against a word that is no code", () => {
    expect([otherCurrency("$4", "dollars"), otherCurrency("$4", ""), otherCurrency("€4", "QQ")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
