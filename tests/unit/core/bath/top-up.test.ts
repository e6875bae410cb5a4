import { describe, expect, it } from "vitest";

import type { Bath } from "../../../../src/core/bath/bath.ts";
import { builderFromWord, builderWords, unknownBuilder } from "../../../../src/core/bath/model/builder.ts";
import { firstAddition, topUp } from "../../../../src/core/bath/top-up.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import type { DomainError } from "../../../../src/core/limits/domain-error.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { alkalinity, cubicMeters, kelvin, ph } from "../../../../src/core/units/quantity.ts";

const openingDose = cubicMeters(1);
const reading = ph(10.8);

function opened(change: Partial<Bath> = {}): Bath {
  return {
    baseline: ph(11.3),
    temperature: kelvin(45 + celsiusZero),
    builder: unknownBuilder,
    alkalinity: undefined,
    ...change,
  };
}

describe("a top-up", () => {
  it("of plain hydroxide in pure water is 1 − 10^−0.5 of the opening dose for half a point, but for ions and volume", () => {
    const plain = opened({ builder: builderFromWord("hydroxide"), alkalinity: alkalinity(0) });
    expect(topUp(openingDose, plain, reading, { loss: "dilution" }).best).toBeCloseTo(1 - 10 ** -0.5, 1);
    expect(Math.abs(topUp(openingDose, plain, reading).best - (1 - 10 ** -0.5))).toBeLessThan(0.04);
  });

  it("of an unknown builder is a range around the hydroxide answer", () => {
    const { low, best, high } = topUp(openingDose, opened(), reading);
    expect(low).toBeLessThan(best);
    expect(best).toBeLessThan(high);
    expect(low).toBeLessThan(1 - 10 ** -0.5);
    expect(high).toBeGreaterThan(1 - 10 ** -0.5);
  });

  it("with an unknown loss lies between acid and dilution, and its range holds both", () => {
    const acid = topUp(openingDose, opened(), reading, { loss: "acid" });
    const dilution = topUp(openingDose, opened(), reading, { loss: "dilution" });
    const either = topUp(openingDose, opened(), reading);
    expect(dilution.best).toBeLessThan(either.best);
    expect(either.best).toBeLessThan(acid.best);
    expect(either.low).toBeLessThanOrEqual(Math.min(acid.low, dilution.low));
    expect(either.high).toBeGreaterThanOrEqual(Math.max(acid.high, dilution.high));
  });

  it.each(builderWords)("of an unknown builder has a range that holds the one of %s, whatever the water", (word) => {
    for (const water of [undefined, alkalinity(0), alkalinity(2), alkalinity(4)]) {
      const bath = { alkalinity: water, temperature: kelvin(25 + celsiusZero) };
      const known = topUp(openingDose, opened({ ...bath, builder: builderFromWord(word) }), reading);
      const unknown = topUp(openingDose, opened(bath), reading);
      expect(unknown.low).toBeLessThanOrEqual(known.low);
      expect(unknown.high).toBeGreaterThanOrEqual(known.high);
    }
  });

  it("has a low that falls steadily as the reading rises", () => {
    const bath = opened({
      baseline: ph(12),
      temperature: kelvin(25 + celsiusZero),
      alkalinity: alkalinity(12),
      builder: builderFromWord("hydroxide"),
    });
    const lows = [9.5, 9.55, 9.6, 9.65, 9.7].map((value) => topUp(openingDose, bath, ph(value)).low);
    expect(lows).toEqual(lows.toSorted((first, second) => second - first));
  });

  it("is a smaller share in alkaline water, whose bicarbonate was part of what the opening dose met", () => {
    const pure = topUp(openingDose, opened({ alkalinity: alkalinity(0.1) }), reading);
    const softened = topUp(openingDose, opened({ alkalinity: alkalinity(4) }), reading);
    expect(softened.best).toBeLessThan(pure.best);
  });

  it("allows for both where the water was not tested", () => {
    const untested = topUp(openingDose, opened(), reading);
    for (const water of [0, 2, 4]) {
      const tested = topUp(openingDose, opened({ alkalinity: alkalinity(water) }), reading);
      expect(untested.low).toBeLessThanOrEqual(tested.best);
      expect(untested.high).toBeGreaterThanOrEqual(tested.best);
    }
  });

  it("is nothing at or above the baseline", () => {
    expect(topUp(openingDose, opened(), ph(11.3)).high).toBe(0);
    expect(topUp(openingDose, opened(), ph(11.5)).best).toBe(0);
  });

  it("has no answer where the baseline is no higher than the water alone", () => {
    const asked = (): unknown => topUp(openingDose, opened({ baseline: ph(6.5) }), ph(6));
    expect(asked).toThrow(expect.objectContaining({ refusal: "no-answer" }) as DomainError);
  });

  it("refuses a temperature beyond the checked constants", () => {
    expect(() => topUp(openingDose, opened({ temperature: kelvin(celsiusZero + 81) }), reading)).toThrow(OutOfRange);
  });

  it("starts with the smaller of the best estimate and the house's share", () => {
    expect(firstAddition(openingDose, cubicMeters(0.7), 1 / 3)).toBeCloseTo(1 / 3, 12);
    expect(firstAddition(openingDose, cubicMeters(0.2), 1 / 3)).toBe(0.2);
  });
});
