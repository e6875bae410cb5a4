import fc from "fast-check";
import { describe, expect, it } from "vitest";

import type { LevelMakeUp } from "../../../../src/core/bath/level-make-up.ts";
import { levelMakeUp } from "../../../../src/core/bath/level-make-up.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { volumeFraction } from "../../../../src/core/units/quantity.ts";

const split = (levelLoss: number, loads: number, dragOutPerLoad: number, drained = 0, strength?: number): LevelMakeUp =>
  levelMakeUp(
    { levelLoss, loads, dragOutPerLoad, drained },
    strength === undefined ? undefined : volumeFraction(strength),
  );

describe("a fall of level", () => {
  it("is all evaporation where nothing was carried out, and needs no strength", () => {
    expect(split(5.49, 0, 0)).toEqual({ evaporated: 5.49, carriedOut: 0, concentrate: 0 });
    expect(split(5.49, 0, 0.18)).toEqual({ evaporated: 5.49, carriedOut: 0, concentrate: 0 });
  });

  it("gives back one part in N+1 of what was carried out", () => {
    const { evaporated, carriedOut, concentrate } = split(6, 10, 0.18, 1, 1 / 29);
    expect([evaporated, carriedOut]).toEqual([expect.closeTo(3.2, 12), expect.closeTo(2.8, 12)]);
    expect(concentrate).toBeCloseTo(2.8 / 29, 12);
  });

  it("divides wholly into evaporated and carried out as long as less was carried out", () => {
    const amount = fc.double({ min: 0.001, max: 1000, noNaN: true });
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 100 }), amount, amount, (water, loads, dragOut, drained) => {
        const loss = water + loads * dragOut + drained;
        const { evaporated, carriedOut } = split(loss, loads, dragOut, drained, 0.025);
        expect(Math.abs(evaporated + carriedOut - loss)).toBeLessThanOrEqual(1e-9 * loss);
      }),
    );
  });

  it("counts as no evaporation where a little more was carried out than the level shows", () => {
    expect(split(1.2, 8, 0.18, 0, 0.025)).toEqual({
      evaporated: 0,
      carriedOut: 1.44,
      concentrate: expect.closeTo(0.036, 12) as number,
    });
  });

  it("may fall short of what was carried out by a third, and by no more", () => {
    expect(split(2, 10, 0.3, 0, 0.025)).toMatchObject({ evaporated: 0, carriedOut: 3 });
    expect(() => split(2, 10, 0.3, 0.01, 0.025)).toThrow("Level loss is 2, but 3.01 was dragged out");
  });

  it("is refused with both figures where much more was carried out", () => {
    expect(() => split(1.2, 10, 0.18, 0.1, 0.025)).toThrow("Level loss is 1.2, but 1.9 was dragged out");
  });

  it("is refused without the strength or the drag-out that it needs", () => {
    expect(() => split(6, 10, 0.18)).toThrow(/Rate is blank or 0, but 1.8 was/);
    expect(() => split(6, 10, 0, 0, 0.025)).toThrow(/Drag out per load is blank/);
  });

  it.each([
    [0, 1, 0.1, 0, 0.025],
    [6, -1, 0.1, 0, 0.025],
    [6, 1, -0.1, 0, 0.025],
    [6, 1, 0.1, -1, 0.025],
    [6, 1, 0.1, 0, 1.1],
  ])("of %d with %d loads of %d, %d drained, at %d is refused", (...given) => {
    expect(() => split(...given)).toThrow(OutOfRange);
  });
});
