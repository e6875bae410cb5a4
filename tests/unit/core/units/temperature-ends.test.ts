import { describe, expect, it } from "vitest";

import { toSi } from "../../../../src/core/units/convert.ts";
import { unitBySymbol } from "../../../../src/core/units/find-unit.ts";
import { callFormula } from "../../../reference/call-formula.ts";

describe("a temperature in °F", () => {
  it.each([
    [32, 0],
    [77, 25],
    [122, 50],
    [140, 60],
    [176, 80],
    [212, 100],
  ])("of %d is the same number as one of %d °C", (fahrenheit, celsius) => {
    expect(toSi(fahrenheit, unitBySymbol("°F", "temperature"))).toBe(toSi(celsius, unitBySymbol("°C", "temperature")));
  });

  it.each([
    ['=BATH.BUFFERPH("phthalate","140 F")', '=BATH.BUFFERPH("phthalate","60 C")'],
    ['=BATH.PHAT(11,"25 C","176 F")', '=BATH.PHAT(11,"25 C","80 C")'],
    ["=BATH.LSI(7.5,212,150,34,320)", '=BATH.LSI(7.5,"100 C",150,34,320)'],
  ])("reaches the end of its range: %s answers as %s", (fahrenheit, celsius) => {
    expect(callFormula(fahrenheit)).toBe(callFormula(celsius));
  });
});
