import { describe, expect, it } from "vitest";
import { rememberingLast } from "../../../src/core/bounded-cache.ts";
import { answersOf, estimateFrom } from "../../../src/core/bath-chemistry/estimate.ts";
import { DomainError } from "../../../src/core/domain-error.ts";

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

describe("remembered answers", () => {
  it("are given again for the same question and forgotten after some others", () => {
    const asked: number[] = [];
    const ask = rememberingLast(2, Object.is, (value: number) => {
      asked.push(value);
      return value * 10;
    });
    expect([1, 1, 2, 1, 3, 1].map(ask)).toEqual([10, 10, 20, 10, 30, 10]);
    expect(asked).toEqual([1, 2, 3, 1]);
  });
});
