import { describe, expect, it } from "vitest";

import { learnedTopUp } from "../../../../src/core/bath/learned-top-up.ts";
import { waterIonization } from "../../../../src/core/chemistry/constants/water-ionization.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";

/** An invented week: three additions in gallons to a bath opened with 4.178 gallons. */
const additions = [
  { added: 1.39, before: ph(10.83), after: ph(11.13) },
  { added: 1.39, before: ph(11.13), after: ph(11.33) },
  { added: 0.4, before: ph(11.33), after: ph(11.39) },
];
const openingDose = 4.178;
const [baseline, reading] = [ph(11.42), ph(10.83)];
/** A meter good to 0.02 tells the third of them too. */
const fine = { accuracy: 0.02, openingDose };
const hydroxide = (value: number): number => 10 ** (value - waterIonization(kelvin(celsiusZero + 25)));

describe("a top-up learned from logged additions", () => {
  it("rests on a median response of 0.002399 mol/L of hydroxide to an opening dose, and comes to 0.824 of it", () => {
    const amount = learnedTopUp(baseline, reading, additions, fine);
    expect(Math.abs(amount / openingDose - 0.824)).toBeLessThanOrEqual(0.002);
    expect(
      Math.abs((hydroxide(baseline) - hydroxide(reading)) / (amount / openingDose) - 0.002399),
    ).toBeLessThanOrEqual(1e-5);
  });

  it("puts pH 11.3 at 0.002018 mol/L of hydroxide, but for the rounding of a pKw of 13.995", () => {
    expect(Math.abs(hydroxide(11.3) - 0.002018)).toBeLessThanOrEqual(3e-6);
  });

  it("is not swayed by one wild reading", () => {
    const wild = [
      ...additions,
      { added: 1, before: ph(10.9), after: ph(13) },
      { added: 1, before: ph(11), after: ph(10.9) },
    ];
    expect(learnedTopUp(baseline, reading, wild, fine)).toBeCloseTo(
      learnedTopUp(baseline, reading, additions, fine),
      10,
    );
  });

  it("is nothing at the baseline, and has no answer without an addition or where none raised the pH", () => {
    expect(learnedTopUp(baseline, baseline, additions, fine)).toBe(0);
    const refusal = expect.objectContaining({ refusal: "no-answer" }) as Error;
    expect(() => learnedTopUp(baseline, reading, [], fine)).toThrow(refusal);
    expect(() => learnedTopUp(baseline, reading, [{ added: 1, before: ph(11), after: ph(11) }], fine)).toThrow(refusal);
  });
});
