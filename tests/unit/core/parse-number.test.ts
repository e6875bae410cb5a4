import { describe, expect, it } from "vitest";
import { parseNumber } from "../../../src/core/units/parse-number.ts";

const number = (value: number) => ({ read: "number", value });

describe("numbers in text", () => {
  it.each([
    ["1.5", 1.5],
    ["1,5", 1.5],
    ["1 500", 1500],
    ["1\u00a0500,25", 1500.25],
    ["1,500.25", 1500.25],
    ["1.500,25", 1500.25],
    ["1,500,000", 1_500_000],
    ["0,500", 0.5],
    ["1.500", 1.5],
    ["1 1/2", 1.5],
    ["3/4", 0.75],
    ["1½", 1.5],
    [".5", 0.5],
    ["-2,5", -2.5],
    ["−2.5", -2.5],
    ["+3", 3],
    ["2e3", 2000],
  ])("reads %s as %d", (text, value) => {
    expect(parseNumber(text)).toEqual(number(value));
  });

  it("refuses 1,500 and shows both readings", () => {
    expect(parseNumber("1,500")).toEqual({ read: "ambiguous", readings: [1.5, 1500] });
    expect(parseNumber("-1,500")).toEqual({ read: "ambiguous", readings: [-1.5, -1500] });
  });

  it.each(["", "abc", "1/0", "1,50,0", "1..5", "1 50", "NaN", "Infinity", "1e999", "--1", "0x10", "1 2 3"])("reads nothing in “%s”", (text) => {
    expect(parseNumber(text)).toEqual({ read: "nothing" });
  });
});
