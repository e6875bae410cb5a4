import { describe, expect, it } from "vitest";

import { parseNumber } from "../../../../src/core/units/parse-number.ts";

const number = (value: number) => ({ read: "number", value });

describe("numbers in text", () => {
  it.each([
    ["a decimal point", "1.5", 1.5],
    ["a decimal point, thousands in groups", "1,500.25", 1500.25],
    ["two groups of three", "1,500,000", 1_500_000],
    ["a decimal comma", "1,5", 1.5],
    ["a decimal comma with two digits", "1,50", 1.5],
    ["a decimal comma behind a 0", "0,500", 0.5],
    ["a decimal comma behind four digits", "1234,567", 1234.567],
    ["a decimal comma alone", ",5", 0.5],
    ["German thousands", "1.500,25", 1500.25],
    ["German millions", "1.500.000", 1_500_000],
    ["German, one decimal", "1.500,5", 1500.5],
    ["a lone point, always decimal", "1.500", 1.5],
    ["thousands apart by a space", "1 500", 1500],
    ["thousands apart by a no-break space", "1\u00a0500,25", 1500.25],
    ["thousands apart by a narrow no-break space", "1\u202f500\u202f000,5", 1_500_000.5],
    ["thousands apart by a thin space", "1\u2009500", 1500],
    ["thousands apart by a figure space", "1\u2007500", 1500],
    ["Swiss thousands", "1'500.25", 1500.25],
    ["Swiss thousands, typographic", "1’500’000", 1_500_000],
    ["Indian lakh", "1,00,000", 100_000],
    ["Indian crore", "1,23,45,678.5", 12_345_678.5],
    ["a fraction", "3/4", 0.75],
    ["a whole and a fraction", "1 1/2", 1.5],
    ["a whole and a fraction, with a hyphen", "1-1/2", 1.5],
    ["a fraction sign", "1½", 1.5],
    ["a fraction sign after a space", "2 ⅜", 2.375],
    ["a fraction slash", "1 1⁄2", 1.5],
    ["a division slash", "1∕8", 0.125],
    ["a leading point", ".5", 0.5],
    ["a trailing point", "60.", 60],
    ["a minus", "-2,5", -2.5],
    ["a true minus sign", "−2.5", -2.5],
    ["a dash for a minus, and a space", "– 2.5", -2.5],
    ["a non-breaking hyphen", "\u20115", -5],
    ["a minus before a fraction", "-1 1/2", -1.5],
    ["a plus", "+3", 3],
    ["full-width digits and point", "１．５", 1.5],
    ["full-width digits, comma and minus", "－１，５", -1.5],
    ["ideographic spaces around", "\u300012\u3000", 12],
    ["a byte-order mark and a mark of direction", "\ufeff12\u200e", 12],
    ["a bookkeeper's brackets for a minus", "(1,234.50)", -1234.5],
    ["Arabic digits", "١٢٣", 123],
    ["Persian digits and decimal mark", "۱۲٫۵", 12.5],
    ["an exponent", "2e3", 2000],
    ["an exponent below 0", "1,5E-3", 0.0015],
    ["a power of ten", "1.5×10^3", 1500],
    ["a power of ten in superscript", "1,5 · 10³", 1500],
    ["a power of ten below 0 in superscript", "2 x 10⁻³", 0.002],
  ])("are read with %s: %s", (_shape, text, value) => {
    expect(parseNumber(text)).toEqual(number(value));
  });

  it.each([
    ["1,500", 1.5, 1500],
    ["-1,500", -1.5, -1500],
    ["12,345", 12.345, 12_345],
    ["１，５００", 1.5, 1500],
    ["1,500e3", 1500, 1_500_000],
  ])("are ambiguous in %s, with both readings", (text, decimal, thousands) => {
    expect(parseNumber(text)).toEqual({ read: "ambiguous", readings: [decimal, thousands] });
  });

  it.each([
    "",
    " ",
    "abc",
    "1/0",
    "0/0",
    "1,50,0",
    "1,500,00",
    "1.500.00",
    "1..5",
    "1,5,5",
    "1 50",
    "0 500",
    "1 3/2",
    "1'50",
    "NaN",
    "Infinity",
    "∞",
    "1e999",
    "--1",
    "+-1",
    "5-",
    "(-5)",
    "-(5)",
    "(5",
    "()",
    "0x10",
    "1_000",
    "1 2 3",
    "1/2/3",
    "11/25/2026",
    "12:30",
    "10^3",
    "5%",
    "$5",
    "1e",
    "e5",
  ])("are not read into “%s”", (text) => {
    expect(parseNumber(text)).toEqual({ read: "nothing" });
  });

  /** Signs of each locale as the Unicode CLDR has them, through the Intl of the engine. */
  it.each([
    "en-US",
    "en-GB",
    "de-DE",
    "de-CH",
    "fr-FR",
    "sv-SE",
    "nb-NO",
    "fi-FI",
    "pl-PL",
    "cs-CZ",
    "ru-RU",
    "pt-BR",
    "es-ES",
    "it-IT",
    "en-IN",
    "hi-IN",
    "ja-JP",
  ])("are read as %s writes them", (locale) => {
    const values = [0.25, -0.5, 7, 12.5, -273.15, 1234.5, 98_765.25, 1_234_567, -12_345_678.75];
    for (const value of values) {
      const text = new Intl.NumberFormat(locale, { numberingSystem: "latn" }).format(value);
      expect(parseNumber(text), text).toEqual(number(value));
    }
  });

  it.each([
    ["ar-EG", "arab"],
    ["fa-IR", "arabext"],
    ["hi-IN", "deva"],
    ["bn-BD", "beng"],
    ["th-TH", "thai"],
    ["my-MM", "mymr"],
  ])("are read as %s writes them in digits of its own, %s", (locale, numberingSystem) => {
    for (const value of [0.25, -0.5, 7, 1234.5, 98_765.25, -12_345_678.75]) {
      const text = new Intl.NumberFormat(locale, { numberingSystem }).format(value);
      expect(text).not.toMatch(/[0-9]/);
      expect(parseNumber(text), text).toEqual(number(value));
    }
  });
});
