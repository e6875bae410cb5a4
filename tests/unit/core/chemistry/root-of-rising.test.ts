import * as fc from "fast-check";
import { describe, expect, it } from "vitest";

import { rootOfRising } from "../../../../src/core/chemistry/root-of-rising.ts";

describe("the search for an amount", () => {
  it("finds where a bent rising function crosses zero", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.9, noNaN: true }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (root, power, head) => {
          const rising = (x: number): number => x ** power - root ** power;
          const found = rootOfRising(rising, rising(0), root * head, 1);
          expect(found).toBeDefined();
          expect(Math.abs((found ?? Number.NaN) / root - 1)).toBeLessThan(1e-4);
        },
      ),
    );
  });

  it("says so where the function stays negative", () => {
    expect(rootOfRising((x) => x - 2, -2, 0.5, 1)).toBeUndefined();
  });

  it("accepts a first guess that is the answer", () => {
    expect(rootOfRising((x) => x - 0.25, -0.25, 0.25, 1)).toBe(0.25);
  });
});
