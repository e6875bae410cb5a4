import { describe, expect, test } from "vitest";

import { fieldTextOf, serialOf } from "../../../../src/advice/wording/moments.ts";
import { readInput } from "../../../../src/pane/controls/read-input.ts";
import { inputColumn } from "../../../../src/pane/record/fields-of.ts";

const sample = inputColumn("readings", "temperature");
const ph = inputColumn("readings", "ph");
const amount = inputColumn("additions", "amount");
const when = inputColumn("readings", "when");
const hardness = inputColumn("waters", "hardness");

describe("what is typed in a field", () => {
  // 53.1 °C is 53.1 × 9/5 + 32 = 127.58 °F by definition.
  test("a temperature in °C is turned into the log's °F, and the converted value is shown", () => {
    expect(readInput(sample, "US", "53.1 C")).toEqual({ read: "value", value: 127.58, converted: "127.58 °F" });
  });

  test("a bare temperature is in the log's unit", () => {
    expect(readInput(sample, "US", "77")).toEqual({ read: "value", value: 77 });
    expect(readInput(sample, "metric", "25")).toEqual({ read: "value", value: 25 });
  });

  // A US gallon is 3.785411784 L by definition.
  test("liters are turned into gallons", () => {
    const reading = readInput(amount, "US", "3.785411784 L");
    expect(reading).toMatchObject({ read: "value", value: 1 });
  });

  test("a decimal comma is a decimal point", () => {
    expect(readInput(ph, "US", "11,42")).toEqual({ read: "value", value: 11.42 });
  });

  test("a comma before three digits is refused with both readings", () => {
    const reading = readInput(amount, "US", "1,500");
    expect(reading.read === "problem" && reading.message).toMatch(/1\.5 or 1500/);
  });

  test("out of range names the field, what was given and what is allowed", () => {
    expect(readInput(ph, "US", "108")).toEqual({
      read: "problem",
      message: 'pH as read: "108" is out of range. Allowed: 0.1 to 14.5. An alkaline bath usually reads 10 to 12.5.',
    });
    const hot = readInput(sample, "US", "120 C");
    expect(hot).toEqual({
      read: "problem",
      message: 'Sample temp: "120 C" (248 °F) is out of range. Allowed: 32 to 212 °F.',
    });
  });

  test("a temperature out of range that fits the other scale gets the hint", () => {
    expect(readInput(sample, "US", "25")).toEqual({
      read: "problem",
      message: 'Sample temp: "25" is out of range. Allowed: 32 to 212 °F. If it is in °C, write "25 C".',
    });
    expect(readInput(sample, "metric", "131")).toMatchObject({
      message: expect.stringMatching(/write "131 F"/) as string,
    });
    expect(readInput(sample, "US", "300")).toMatchObject({ message: expect.not.stringMatching(/write/) as string });
  });

  // 18 grains per US gallon are 308 mg/L, 18 German degrees 321, 18 grains per imperial gallon 257.
  test.each([
    ["US", '"18 gpg" (308 mg/L)'],
    ["metric", '"18 °dH" (321 mg/L)'],
    ["imperial", '"18 °Clark" (257 mg/L)'],
  ] as const)("a bare hardness of 18 in %s units has to say its unit", (system, slip) => {
    expect(readInput(hardness, system, "18")).toEqual({
      read: "problem",
      message: `Hardness: "18" has no unit. Write ${slip} or "18 mg/L".`,
    });
    expect(readInput(hardness, system, "18 mg/L")).toMatchObject({ read: "value", value: 18 });
    expect(readInput(hardness, system, "180")).toMatchObject({ read: "value", value: 180 });
    expect(readInput(hardness, system, "18", "log")).toEqual({ read: "value", value: 18 });
  });

  test("an amount of money may bear its currency, and nothing else may", () => {
    const price = inputColumn("concentrates", "packPrice");
    for (const text of ["$142.50", "142.50 $", "142,50 €", "142.5"])
      expect(readInput(price, "US", text)).toEqual({ read: "value", value: 142.5 });
    expect(readInput(ph, "US", "$11").read).toBe("problem");
  });

  test("an amount in another currency than the shop's is refused aloud", () => {
    const price = inputColumn("concentrates", "packPrice");
    expect(readInput(price, "US", "€142.50", "person", "USD")).toEqual({
      read: "problem",
      message: 'Pack price: "€142.50" is in €, and the log is kept in USD. Convert it first.',
    });
    expect(readInput(price, "US", "$142.50", "person", "USD")).toEqual({ read: "value", value: 142.5 });
  });

  test("words where a number belongs are refused", () => {
    expect(readInput(ph, "US", "about 11")).toEqual({
      read: "problem",
      message:
        'pH as read: "about 11" is not a number. Allowed: 0.1 to 14.5. An alkaline bath usually reads 10 to 12.5.',
    });
  });

  test("blank is blank, never 0", () => {
    expect(readInput(ph, "US", "  ")).toEqual({ read: "blank" });
  });

  // 1 March 2027 is serial 46447 in Excel's 1900 system.
  test("a date-time becomes Excel's serial number and comes back", () => {
    expect(serialOf("2027-03-01T12:00")).toBe(46447.5);
    expect(fieldTextOf(46447.5)).toBe("2027-03-01T12:00");
    expect(readInput(when, "US", "2027-03-01T12:00")).toEqual({ read: "value", value: 46447.5 });
    expect(readInput(when, "US", "2027-02-30T12:00").read).toBe("problem");
  });
  test("a date-time may be typed with a blank, as the message asks for it", () => {
    expect(readInput(when, "US", "2027-03-01 09:45")).toEqual(readInput(when, "US", "2027-03-01T09:45"));
  });

  // 1 March 2028 is 46813: 2028 is a leap year, 2027 none.
  test("the leap day is a day, and what is no day or no minute is refused", () => {
    expect(readInput(when, "US", "2028-02-29T12:00")).toEqual({ read: "value", value: 46812.5 });
    for (const text of ["2027-02-29T12:00", "2027-03-01T10:75", "2027-03-01T24:00", "3/1/2027 9:45", "1.3.2027 9:45"]) {
      expect(readInput(when, "US", text)).toEqual({
        read: "problem",
        message: `When: "${text}" is not a date. Write it as 2027-03-01 09:45.`,
      });
    }
  });

  test("a date before 2000 is a slip and is refused, as in the sheet", () => {
    expect(readInput(when, "US", "0027-03-01T12:00")).toEqual({
      read: "problem",
      message: 'When: "0027-03-01T12:00" is before the year 2000. Check the date.',
    });
  });

  test("a meter that shows 0 has read nothing", () => {
    expect(readInput(ph, "US", "0").read).toBe("problem");
  });

  test("a name that look-ups would read as a pattern is refused with what is allowed", () => {
    const bath = inputColumn("baths", "bath");
    expect(readInput(bath, "US", "B-*")).toEqual({
      read: "problem",
      message:
        'Bath: "B-*" cannot be looked up. Allowed: at most 40 characters, none of them * ? or ~, and no < > or = in front.',
    });
    expect(readInput(bath, "US", 'O\'Neil "2" 🙂')).toEqual({ read: "value", value: 'O\'Neil "2" 🙂' });
  });
});
