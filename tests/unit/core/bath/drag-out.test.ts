import { describe, expect, it } from "vitest";

import { strengthLeft } from "../../../../src/core/bath/drag-out.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { cubicMeters } from "../../../../src/core/units/quantity.ts";

const left = (volume: number, perLoad: number, loads: number): number =>
  strengthLeft(cubicMeters(volume), cubicMeters(perLoad), loads);

describe("the strength that drag-out leaves", () => {
  it("is 0.965 after 24 loads of 0.18 out of 121.175, by the power and by the exponential", () => {
    expect(Math.abs(left(121.175, 0.18, 24) - 0.965)).toBeLessThanOrEqual(0.0002);
    expect(Math.abs(left(121.175, 0.18, 24) - Math.exp((-24 * 0.18) / 121.175))).toBeLessThanOrEqual(0.0003);
  });

  it("is half after 68.97 loads of a hundredth", () => {
    expect(Math.abs(left(1, 0.01, 68.97) - 0.5)).toBeLessThanOrEqual(0.00005);
  });

  it("goes on from where an earlier shift stopped", () => {
    expect(left(1, 0.003, 20) * left(1, 0.003, 30)).toBeCloseTo(left(1, 0.003, 50), 14);
  });

  it.each([
    [0, 0.1, 1],
    [1, 0, 1],
    [1, 1, 1],
    [1, 0.1, 0],
    [1, 0.1, -2],
  ])("of %d with %d a load and %d loads is refused", (...given) => {
    expect(() => left(...given)).toThrow(OutOfRange);
  });
});
