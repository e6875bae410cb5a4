import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { cubicMeters } from "../../../../src/core/units/quantity.ts";
import { blend } from "../../../../src/core/water/blend.ts";
import { blendShare } from "../../../../src/core/water/blend-share.ts";

const water = (value: number, volume: number) => ({ value, volume: cubicMeters(volume) });
const refusedAs = (refusal: string) => expect.objectContaining({ refusal }) as Error;

describe("a blend", () => {
  it("of 4 parts at 20 and 15 at 1 has 5 (mass balance)", () => {
    expect(blend([water(20, 4), water(1, 15)])).toBeCloseTo(5, 12);
  });

  it("takes no notice of a water of which there is none", () => {
    expect(blend([water(20, 4), water(1000, 0)])).toBe(20);
  });

  it("is refused without any volume, with a volume below 0 or a value below 0", () => {
    expect(() => blend([water(20, 0)])).toThrow(refusedAs("invalid"));
    expect(() => blend([water(20, -1), water(1, 3)])).toThrow(OutOfRange);
    expect(() => blend([water(-20, 1)])).toThrow(OutOfRange);
  });
});

describe("the share of the second water", () => {
  it("that brings 20 grains down to 5 with a water of 1 is 0.7895 (mass balance)", () => {
    expect(Math.abs(blendShare(20, 1, 5) - 0.7895)).toBeLessThanOrEqual(0.0001);
  });

  it("is 0 or 1 where the target is one of the waters", () => {
    expect(blendShare(20, 1, 20)).toBe(0);
    expect(blendShare(20, 1, 1)).toBe(1);
  });

  it.each([25, 0.5])("has no answer for a target of %d, outside 1 to 20", (target) => {
    expect(() => blendShare(20, 1, target)).toThrow(refusedAs("no-answer"));
    expect(() => blendShare(1, 20, target)).toThrow(refusedAs("no-answer"));
  });

  it("is refused where both waters are the same", () => {
    expect(() => blendShare(5, 5, 5)).toThrow(refusedAs("invalid"));
  });
});
