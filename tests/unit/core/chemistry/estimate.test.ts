import { describe, expect, it } from "vitest";

import { answersOf, estimateFrom } from "../../../../src/core/bath/model/estimate.ts";
import { DomainError } from "../../../../src/core/limits/domain-error.ts";

describe("an estimate", () => {
  it("takes the median of the middles and the span of everything", () => {
    expect(
      estimateFrom([
        [1, 3],
        [4, 6],
        [10, 10],
        [0, 2],
      ]),
    ).toEqual({ low: 0, best: 3.5, high: 10 });
  });

  it("leaves out questions without an answer, and passes on the first refusal when none has one", () => {
    const half = (value: number): number => {
      if (value < 0) throw new DomainError("no-answer", `no half of ${value}`);
      return value / 2;
    };
    expect(answersOf([4, -1, 6], half)).toEqual([2, 3]);
    expect(() => answersOf([-1, -2], half)).toThrow("no half of -1");
  });

  it("never swallows an invalid argument or a fault", () => {
    const invalid = (): number => {
      throw new DomainError("invalid", "not a number");
    };
    const fault = (): number => {
      throw new TypeError("a fault");
    };
    expect(() => answersOf([1], invalid)).toThrow("not a number");
    expect(() => answersOf([1], fault)).toThrow(TypeError);
  });
});
