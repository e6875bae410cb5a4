import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import type { MeterCheck } from "../../../../src/core/meter/drift.ts";
import { driftCorrected } from "../../../../src/core/meter/drift.ts";
import { ph } from "../../../../src/core/units/quantity.ts";

/** An invented week: days and minutes since the month began. */
const day = (date: number, hour: number, minute: number): number => date + (hour + minute / 60) / 24;
const checks: readonly MeterCheck[] = [
  { time: day(1, 8, 0), asFoundError: 0.02 },
  { time: day(4, 8, 5), asFoundError: 10.15 - 10.01 },
  { time: day(5, 7, 30), asFoundError: 0.01 },
];
/** Doubles between 4 and 16 lie 8.9e-16 or 1.8e-15 apart, so a difference of two of them is no finer. */
const spacing = 1.8e-15;
const corrected = (reading: number, when: number, list = checks): number => driftCorrected(ph(reading), when, list);

describe("a reading with the meter's drift taken out", () => {
  it("loses 0.0466 a day where 0.14 was found after 3.003 days", () => {
    expect(corrected(11, day(3, 11, 20))).toBeCloseTo(11 - 2.139 * 0.0466, 3);
    expect(corrected(10.96, day(3, 16, 30))).toBeCloseTo(10.96 - 2.354 * 0.0466, 3);
  });

  it("is the reading right after a check and short of the whole error right before the next", () => {
    expect(corrected(11, day(1, 8, 0))).toBe(11);
    expect(corrected(11, day(4, 8, 4.999))).toBeCloseTo(10.86, 4);
  });

  it("counts a reading at the time of a check as made after it", () => {
    expect(corrected(11, day(4, 8, 5))).toBe(11);
  });

  it("is the reading before the first check, after the last, and without any", () => {
    expect(corrected(11, day(1, 7, 59))).toBe(11);
    expect(corrected(11, day(5, 7, 31))).toBe(11);
    expect(corrected(11, 3, [])).toBe(11);
  });

  it("is the reading between two checks of which the later found no error", () => {
    expect(
      corrected(11, 3, [
        { time: 2, asFoundError: 0.3 },
        { time: 4, asFoundError: 0 },
      ]),
    ).toBe(11);
  });

  it("rises where the meter read too low", () => {
    expect(
      corrected(11, 3, [
        { time: 2, asFoundError: 0 },
        { time: 4, asFoundError: -0.2 },
      ]),
    ).toBeCloseTo(11.1, 12);
  });

  it("does not depend on the order of the checks", () => {
    const list = fc.uniqueArray(
      fc.record({
        time: fc.double({ min: 1, max: 100, noNaN: true }),
        asFoundError: fc.double({ min: -1, max: 1, noNaN: true }),
      }),
      { selector: ({ time }) => time, maxLength: 8 },
    );
    const when = fc.double({ min: 1, max: 100, noNaN: true });
    const shuffled = list.chain((each) =>
      fc.tuple(fc.constant(each), fc.shuffledSubarray([...each], { minLength: each.length })),
    );
    fc.assert(
      fc.property(shuffled, when, ([given, mixed], at) => {
        expect(corrected(11, at, mixed)).toBe(corrected(11, at, given));
      }),
    );
  });

  it("never moves by more than the next check found", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 9, noNaN: true }),
        (asFoundError, when) => {
          const moved = Math.abs(
            corrected(7, when, [
              { time: 1, asFoundError: 0 },
              { time: 9.5, asFoundError },
            ]) - 7,
          );
          expect(moved).toBeLessThanOrEqual(Math.abs(asFoundError) + spacing);
        },
      ),
    );
  });

  it("refuses two checks of one time that disagree, and takes two that agree", () => {
    const twice = (error: number): readonly MeterCheck[] => [
      { time: 1, asFoundError: 0 },
      { time: 3, asFoundError: 0.2 },
      { time: 3, asFoundError: error },
    ];
    expect(() => corrected(11, 2, twice(0.1))).toThrow(/twice/);
    expect(corrected(11, 2, twice(0.2))).toBeCloseTo(10.9, 12);
  });

  it("refuses a reading typed in the place of an error", () => {
    expect(() =>
      corrected(11, 2, [
        { time: 1, asFoundError: 0 },
        { time: 3, asFoundError: 10.15 },
      ]),
    ).toThrow(OutOfRange);
  });

  it.each([
    [15, 2],
    [11, 0],
    [11, -1],
  ])("refuses a reading of %d at %d", (reading, when) => {
    expect(() => corrected(reading, when)).toThrow(OutOfRange);
  });
});
