import { describe, expect, it } from "vitest";

import { Area, CellError, type Result, Spill } from "../../../../src/joblog/evaluate/cell-value.ts";
import { sheetFunctions } from "../../../../src/joblog/evaluate/sheet-functions.ts";

type Case = readonly [name: keyof typeof sheetFunctions, args: readonly Result[], result: Result];

const column = (...cells: ConstructorParameters<typeof Area>[0]): Area => new Area(cells);

/** Examples of Microsoft's pages on the functions, from memory. */
const published: readonly Case[] = [
  ["ROUND", [2.15, 1], 2.2],
  ["ROUND", [2.149, 1], 2.1],
  ["ROUND", [-1.475, 2], -1.48],
  ["ROUND", [21.5, -1], 20],
  ["ROUND", [626.3, -3], 1000],
  ["ROUND", [1.98, -1], 0],
  ["ROUND", [-0.001, 2], 0],
  ["ROUND", [-50.55, -2], -100],
  ["INT", [8.9], 8],
  ["INT", [-8.9], -9],
  ["SMALL", [column(3, 4, 5, 2, 3, 4, 6, 4, 7), 4], 4],
  ["SMALL", [column(1, 4, 8, 3, 7, 12, 54, 8, 23), 2], 3],
  ["MATCH", [41, column(25, 38, 40, 41), 0], 4],
  ["SUBSTITUTE", ["Sales Data", "Sales", "Cost"], "Cost Data"],
  ["TRIM", [" First Quarter   Earnings "], "First Quarter Earnings"],
  ["FIND", ["M", "Miriam McGovern"], 1],
  ["FIND", ["m", "Miriam McGovern"], 6],
  ["SEARCH", ["margin", "Profit Margin"], 8],
  ["LEFT", ["Sale Price", 4], "Sale"],
  ["MID", ["Fluid Flow", 1, 5], "Fluid"],
  ["LEN", ["Phoenix, AZ"], 11],
  ["DATE", [2008, 1, 1], 39448],
  ["DATE", [2008, 14, 2], 39846],
  ["DATE", [2008, 1, 35], 39482],
  ["YEAR", [39448.75], 2008],
  ["MONTH", [39846], 2],
  ["SUM", [column(-5, 15, 30, "5", true)], 40],
  ["MAXIFS", [column(89, 93, 96, 85), column(1, 2, 2, 3), 2], 96],
  ["MAXIFS", [column(10, 11), column("b", "a"), "c"], 0],
  ["MINIFS", [column(89, 93, 96, 85), column(1, 2, 2, 3), 2], 93],
  ["SUMIFS", [column(5, 4, 15, 3), column("Apples", "Apples", "Pears", "Apples"), "A*"], 12],
  ["COUNTIFS", [column(1, 2, 3, 4), "<4", column(5, 6, 7, 8), ">5"], 2],
];

/** What Excel does besides (common knowledge of Excel, no page). */
const edges: readonly Case[] = [
  ["SUM", [], 0],
  ["MAX", [column("x", null)], 0],
  ["MIN", [column()], 0],
  ["COUNT", [column(1, "2", null, true, 0)], 2],
  ["AND", [true, 1], true],
  ["OR", [false, 0], false],
  ["NOT", [0], true],
  ["NOT", [column(true, 0)], column(false, true)],
  ["ISNUMBER", [column(1, "1", null)], column(true, false, false)],
  ["MATCH", ["b-1", column(null, "B-1", "b-1"), 0], 2],
  ["MATCH", [0, column(null, 0), 0], 2],
  ["INDEX", [new Spill([[1, 2, 3]]), 1, 3], 3],
  ["INDEX", [column("a", "b"), 2], "b"],
  ["SUMPRODUCT", [column(1, 0, 1), column(2, 4, "x")], 2],
  ["TEXT", [11.005, "0.00"], "11.01"],
];

const code = (result: Result): unknown => (result instanceof CellError ? result.code : result);

describe("a function of the spreadsheet", () => {
  it.each([...published, ...edges])("%s of %j is %j", (name, args, result) => {
    expect(sheetFunctions[name](args)).toEqual(result);
  });

  it.each<readonly [keyof typeof sheetFunctions, readonly Result[], string]>([
    ["AVERAGEIFS", [column(1), column("a"), "b"], "#DIV/0!"],
    ["MATCH", ["x", column("a"), 0], "#N/A"],
    ["FIND", ["x", "abc"], "#VALUE!"],
    ["INDEX", [column("a"), 2], "#REF!"],
    ["SMALL", [column(1), 2], "#NUM!"],
    ["AND", [true, "yes"], "#VALUE!"],
    ["SUM", [column(1, new CellError("#N/A"))], "#N/A"],
    ["SUMPRODUCT", [column(1), column(new CellError("#REF!"))], "#REF!"],
    ["NA", [], "#N/A"],
  ])("%s of %j is the error %s", (name, args, error) => {
    expect(code(sheetFunctions[name](args))).toBe(error);
  });
});
