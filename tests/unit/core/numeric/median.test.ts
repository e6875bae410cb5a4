import { describe, expect, it } from "vitest";

import { DomainError } from "../../../../src/core/limits/domain-error.ts";
import { median } from "../../../../src/core/numeric/median.ts";
import { theilSenSlope } from "../../../../src/core/numeric/theil-sen.ts";

describe("the middle of some values", () => {
  it.each([
    [[7], 7],
    [[9, 10, 2], 9],
    [[10, 2, 9, 100], 9.5],
    [[-1, -10, 3], -1],
  ])("of %j is %d", (values, middle) => {
    expect(median(values)).toBe(middle);
  });

  it("leaves the values in their order", () => {
    const values = [3, 1, 2];
    median(values);
    expect(values).toEqual([3, 1, 2]);
  });

  it("of no values is refused as a question without an answer", () => {
    expect(() => median([])).toThrow(DomainError);
    expect(() => median([])).toThrow(expect.objectContaining({ refusal: "no-answer" }) as Error);
  });

  it("is 0 and never −0, and so is a level slope counted backwards", () => {
    expect(median([-0, -0])).toBe(0);
    expect(
      theilSenSlope([
        { x: 5, y: 1 },
        { x: 0, y: 1 },
      ]),
    ).toBe(0);
    expect(
      theilSenSlope([
        { x: 0, y: 1 },
        { x: 5, y: 1 },
      ]),
    ).toBe(0);
  });
});
