import { describe, expect, it } from "vitest";

import { callFormula } from "../../reference/call-formula.ts";

describe("a function of meter, level, trend, release, heat, stock or table", () => {
  it.each([
    [
      "=BATH.DRIFTFIX(11,103.3,{48;0},{0.02;0.14})",
      "Check times has no time in cell 2 of its range, where there is an error.",
    ],
    [
      "=BATH.DRIFTFIX(11,103.3,{48;120.1},{0.02})",
      "Check times and as-found errors have 2 and 1 cells; they must have the same number.",
    ],
    ["=BATH.DRIFTFIX(11,103.3,{0;0},{0.02;0.14})", "Check times are blank or 0, where there are errors."],
    ['=BATH.DRIFTFIX(11,103.3,{48;120.1},{0.02;"pending"})', "One of the as found errors is “pending”, not a number."],
    ["=BATH.DRIFTFIX(11,103.3,{48;120.1},{0.02;10.15})", "As found error is 10.15; allowed: -2 to 2."],
    [
      '=BATH.DRIFTFIX(11,"3/4/2027 11:20",{48;120.1},{0.02;0.14})',
      "“when” is “3/4/2027 11:20”, which is text; enter it as a date and time, or as a number of hours.",
    ],
    [
      "=BATH.METERSLOPE(7,,10,)",
      "mV 1 and mV 2 are the same: blank cells, or an electrode that is dead or not connected",
    ],
    [
      '=BATH.METERSLOPE("carbonat",0,7,-170)',
      "Buffer 1 is “carbonat”; write “phthalate”, “phosphate”, “technical 7”, “phosphate 7.4”, “borax”, “carbonate”, “lime”, or its pH from the bottle.",
    ],
    ["=BATH.METERFIX(11,7,7.1,10,7.1)", "Read 1 and read 2 are the same, so there is no line to correct by"],
    [
      "=BATH.MAKEUP(6,10,0.18)",
      "Rate is blank or 0, but 1.8 was dragged out and drained: the concentrate in it follows from the bath's strength, such as 1+40",
    ],
    [
      "=BATH.MAKEUP(6,10,0,,0.025)",
      "Drag out per load is blank or 0, but there were loads: every load carries some solution out",
    ],
    ["=BATH.DISCHARGECHECK(8,9,6)", "Low must lie below high: the limits are the wrong way around or the same"],
    [
      "=BATH.DISCHARGECHECK(8,6,9,131)",
      "Temperature is 131 °F; allowed: 32 to 104 °F. Let it cool and read again: a hot alkaline bath reads lower than a cool one.",
    ],
    ["=BATH.PHTREND({1;2;3},{11.4;11.3})", "Times and readings have 3 and 2 cells; they must have the same number."],
    ["=BATH.PHTREND({1;2;3},{11.4;11.3;112})", "Reading is 112; allowed: 0 to 14.5."],
    [
      "=BATH.TIMELEFT({1;2;3;0},{11.4;11.3;11.2;11.1},10.9)",
      "There are 3 readings; foreseeing takes at least 4 since the last addition",
    ],
    ["=BATH.DRAGOUT(10,10,3)", "Per load is 10; allowed: more than 0 and less than 10."],
    ['=BATH.DRAGOUT("460 L",0.5,24)', "Per load has no unit and volume has one; write a unit with both, or with none."],
    ['=BATH.MAKEUP("6 gal",10,0.18)', "Level loss is “6 gal”; write the number alone, without a unit."],
    ['=BATH.METERSLOPE(7,"flat",10,-165)', "mV 1 is “flat”, not a number."],
    [
      "=BATH.HEATENERGY(100,120,61)",
      "“to” is 61 °F; allowed: more than 120 and at most 212 °F. If it is in °C, write “61 C”.",
    ],
    ["=BATH.HEATTIME(100,60,120,5.5,90)", "Efficiency is 90; write a share such as 0.9, or 90%."],
    ["=BATH.STOCKDAYS(10,{-1;2})", "Issue is -1; allowed: 0.000001 to 1000000000."],
    [
      '=BATH.DOSETABLE({29},{"=1+28"})',
      "One of the rates is “=1+28”; write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L.",
    ],
  ])("refuses %s with “%s”", (formula, message) => {
    expect(() => callFormula(formula)).toThrow(expect.objectContaining({ message }) as Error);
  });

  it.each([
    ['=BATH.DRIFTFIX(11,103.3,{"When";48;120.1;0},{"Error";0.02;0.14;0})', 11 - (0.14 * 55.3) / 72.1],
    ["=BATH.DRIFTFIX(11,103.3,{120.1;48},{0.14;0.02})", 11 - (0.14 * 55.3) / 72.1],
    ["=BATH.DRIFTFIX(11,103.3,{48;120.1},{0.02;0})", 11],
    ["=BATH.DRIFTFIX(11,103.3,{0;0},{0;0})", 11],
    ["=BATH.METERSLOPE(7,0,10,-177.4778)", 100],
    ['=BATH.METERSLOPE(6.88,0,"carbonate",-183,"20 C")', (100 * 183) / (10.062 - 6.88) / (0.198421 * 293.15)],
    ["=BATH.MAKEUP(5,0,)", [[5, 0, 0]]],
    ["=BATH.MAKEUP(5,0,0,2,0.05)", [[3, 2, 0.1]]],
    ["=BATH.STOCKDAYS(0,{1;2})", 0],
    [
      '=BATH.DOSETABLE({"Volume","29 L"},{"Rate";"+1+28";0.05;0},"metric")',
      [
        ["L", "1+28", 0.05],
        [29, 1, 1.45],
      ],
    ],
  ])("answers %s with %j", (formula, expected) => {
    const close = (each: unknown): unknown => (typeof each === "number" ? expect.closeTo(each, 3) : each);
    expect(callFormula(formula)).toEqual(
      Array.isArray(expected) ? expected.map((row) => row.map(close)) : close(expected),
    );
  });
});
