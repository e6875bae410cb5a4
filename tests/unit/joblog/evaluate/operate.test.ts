import { describe, expect, it } from "vitest";

import { Area, CellError, type Scalar } from "../../../../src/joblog/evaluate/cell-value.ts";
import { operate } from "../../../../src/joblog/evaluate/operate.ts";
import type { Operator } from "../../../../src/joblog/formula/expression.ts";

/** Excel's order of unlike values and what it makes of blanks (Microsoft's page on SORT order: numbers, text, FALSE, TRUE; from memory). */
const results: readonly (readonly [left: Scalar, operator: Operator, right: Scalar, result: Scalar])[] = [
  ["B-1", "=", "b-1", true],
  [9, "<", "1", true],
  ["z", "<", false, true],
  [false, "<", true, true],
  [1, "=", "1", false],
  [1, "=", true, false],
  [null, "=", "", true],
  [null, "=", 0, true],
  [null, "=", false, true],
  [null, "=", null, true],
  [null, "<", 1, true],
  ["", "=", 0, false],
  ["", ">", 99, true],
  [2, "<>", 3, true],
  [3, ">=", 3, true],
  [3, "<=", 2, false],
  [null, "-", 5, -5],
  [null, "+", null, 0],
  ["2", "*", 3, 6],
  [true, "+", 1, 2],
  [7, "/", 2, 3.5],
  [0.1, "&", "", "0.1"],
  [null, "&", "x", "x"],
  [true, "&", "", "TRUE"],
  [1 / 3, "&", "", "0.333333333333333"],
];

const code = (value: unknown): unknown => (value instanceof CellError ? value.code : value);

describe("an operator between two cells", () => {
  it.each(results)("%j %s %j is %j", (left, operator, right, result) => {
    expect(operate(operator, left, right)).toBe(result);
  });

  it("has errors of its own", () => {
    expect(code(operate("/", 1, 0))).toBe("#DIV/0!");
    expect(code(operate("/", 1, null))).toBe("#DIV/0!");
    expect(code(operate("+", "eleven", 1))).toBe("#VALUE!");
    expect(code(operate("+", "", 1))).toBe("#VALUE!");
  });

  it("hands on the first error that it is given", () => {
    const [first, second] = [new CellError("#N/A"), new CellError("#VALUE!")];
    for (const operator of ["=", "&", "*"] as const) {
      expect(operate(operator, first, second)).toBe(first);
      expect(operate(operator, 1, second)).toBe(second);
    }
  });

  it("goes cell by cell where one side is a column", () => {
    expect(operate("=", new Area(["a", null, 3]), "a")).toEqual(new Area([true, false, false]));
    expect(operate("*", new Area([1, 2]), new Area([3, true]))).toEqual(new Area([3, 2]));
    expect(operate("-", null, new Area([true, false]))).toEqual(new Area([-1, 0]));
  });
});
