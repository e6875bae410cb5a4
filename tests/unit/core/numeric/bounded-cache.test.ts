import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { memoize } from "../../../../src/core/numeric/bounded-cache.ts";

function counted(count: number): { readonly ask: (value: number) => number; readonly asked: number[] } {
  const asked: number[] = [];
  const ask = memoize(count, String, (value: number) => {
    asked.push(value);
    if (value < 0) throw new RangeError("below nothing");
    return value * 10;
  });
  return { ask, asked };
}

/** The different questions among the latest, the last first. */
const differing = (questions: readonly number[]): readonly number[] => [...new Set([...questions].reverse())];

describe("a memoized function", () => {
  it("keeps what was asked for last, and forgets what was not asked for while others were", () => {
    const { ask, asked } = counted(2);
    expect([1, 1, 2, 1, 3, 1, 4, 1, 5, 2].map(ask)).toEqual([10, 10, 20, 10, 30, 10, 40, 10, 50, 20]);
    expect(asked).toEqual([1, 2, 3, 4, 5, 2]);
  });

  it("asks anew what threw, and keeps the rest", () => {
    const { ask, asked } = counted(2);
    ask(1);
    expect(() => ask(-1)).toThrow("below nothing");
    expect(() => ask(-1)).toThrow("below nothing");
    ask(1);
    expect(asked).toEqual([1, -1, -1]);
  });

  it("never asks again for one of the last so many, and always for what is further back than twice as many", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.array(fc.integer({ min: 0, max: 12 }), { maxLength: 60 }),
        (count, questions) => {
          const { ask, asked } = counted(count);
          questions.forEach((one, index) => {
            const place = differing(questions.slice(0, index)).indexOf(one);
            const before = asked.length;
            expect(ask(one)).toBe(one * 10);
            if (place >= 0 && place < count) expect(asked.length).toBe(before);
            if (place < 0 || place >= 2 * count) expect(asked.length).toBe(before + 1);
          });
        },
      ),
    );
  });
});
