import { describe, expect, it } from "vitest";

import { CellError, type Scalar } from "../../../../src/joblog/evaluate/cell-value.ts";
import { criterionTest } from "../../../../src/joblog/evaluate/criterion.ts";

const fruit: readonly Scalar[] = ["apples", "oranges", "peaches", "apples"];
const stock: readonly Scalar[] = [32, 54, 75, 86];

/** The examples of Microsoft's page on COUNTIF, and what it says there of criteria; from memory. */
const published: readonly (readonly [what: string, cells: readonly Scalar[], criterion: Scalar, count: number])[] = [
  ["a word", fruit, "apples", 2],
  ["a word in capitals", fruit, "APPLES", 2],
  ["a number over a limit", stock, ">55", 2],
  ["any other number", stock, "<>75", 3],
  ["limits at the ends", stock, "<=86", 4],
  ["any text", [...fruit, "", 3, null], "*", 5],
  ["so many characters and an ending", fruit, "?????es", 2],
  ["a mark after a tilde", ["a?", "ab", "a*"], "a~?", 1],
  ["a tilde by itself, doubled", ["a~b", "ab"], "a~~b", 1],
];

/** What Excel makes of cells that are not what they are compared with (common knowledge of Excel, no page). */
const edges: readonly (readonly [what: string, cells: readonly Scalar[], criterion: Scalar, count: number])[] = [
  ["a blank criterion as 0", [0, null, "", 1], null, 1],
  ["a number in text as that number", [5, "5", "5 kg"], 5, 2],
  ["and a number written in the criterion too", [5, "5"], "=5", 2],
  ["no text by a limit in figures", ["6", 7, null], ">5", 1],
  ["no blank by a limit", [null, 3], "<5", 1],
  ["texts by their order", ["apple", "pear", 5], "<m", 1],
  ["blank and empty text by an empty criterion", [null, "", 0], "", 2],
  ["what is not blank, an empty text too", [null, "", 0], "<>", 2],
  ["blanks among what is something else", [null, "", "x"], "<>x", 2],
  ["points of a word as they stand", ["a.b", "axb"], "a.b", 1],
  ["a truth value by no number", [true, 1], 1, 1],
];

const count = (cells: readonly Scalar[], criterion: Scalar): number => cells.filter(criterionTest(criterion)).length;

describe("a criterion of COUNTIFS", () => {
  it.each([...published, ...edges])("counts %s", (_what, cells, criterion, wanted) => {
    expect(count(cells, criterion)).toBe(wanted);
  });

  it("passes over an error unless it asks for one", () => {
    const cells = [new CellError("#N/A"), 1];
    expect(count(cells, ">0")).toBe(1);
    expect(count(cells, new CellError("#N/A", "another sentence"))).toBe(1);
    expect(count(cells, new CellError("#VALUE!"))).toBe(0);
  });
});
