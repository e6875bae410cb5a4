import fc from "fast-check";
import { describe, expect, it } from "vitest";

import type { CellInput } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { findFunction } from "../../functions/find-function.ts";
import type { Bath } from "../../src/core/bath/bath.ts";
import { anchoredBaths } from "../../src/core/bath/model/bath-question.ts";
import { builderFromWord } from "../../src/core/bath/model/builder.ts";
import { afterLoss } from "../../src/core/bath/model/loss.ts";
import { toppedUp, topUpTo } from "../../src/core/bath/model/share-of-dose.ts";
import { waterFromTests } from "../../src/core/bath/model/water.ts";
import { topUpShare } from "../../src/core/bath/top-up.ts";
import { phOf } from "../../src/core/chemistry/ph-of.ts";
import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { alkalinity as alkalinityOf, equivalentsPerKilogram, kelvin, ph } from "../../src/core/units/quantity.ts";
import { runs } from "../setup/random-runs.ts";

function spill(id: string, ...cells: readonly CellInput[]): readonly number[] {
  const fn = findFunction(id);
  if (fn === undefined) throw new RangeError(`No function ${id}`);
  const answer = evaluate(fn, cells);
  return (Array.isArray(answer) ? answer.flat() : [answer]).map(Number);
}

const ask = (id: string, ...cells: readonly CellInput[]): number => spill(id, ...cells)[0] ?? Number.NaN;

const word = fc.constantFrom("hydroxide", "silicate", "carbonate", "phosphate");
const maybeUnknown = fc.constantFrom("hydroxide", "silicate", "carbonate", "phosphate", "unknown");
/** A carbonate bath reaches no more when it is hot. */
const baseline = fc.double({ min: 10.2, max: 11.4, noNaN: true });
const celsius = fc.double({ min: 10, max: 75, noNaN: true });
/** Every builder reaches these with something to spare. */
const reachable = fc.double({ min: 10.2, max: 11, noNaN: true });
/** As cool as a bath must be before acid goes in. */
const cooled = fc.double({ min: 10, max: 39.9, noNaN: true });
const lukewarm = fc.double({ min: 10, max: 45, noNaN: true });
/** A bare number may be in another unit where it is low. */
const labFigure = (tested: number): string => `${String(tested)} mg/L`;

const alkalinity = fc.double({ min: 1, max: 300, noNaN: true });
const drop = fc.double({ min: 0.1, max: 1.2, noNaN: true });
const few = runs(60);

describe("a bath of any known builder", () => {
  it("returns to its reading when it is heated and cooled again", () => {
    fc.assert(
      fc.property(baseline, celsius, celsius, word, alkalinity, (read, from, to, builder, water) => {
        const there = ask("PHAT", read, from, to, builder, labFigure(water), "metric");
        expect(Math.abs(ask("PHAT", there, to, from, builder, labFigure(water), "metric") - read)).toBeLessThanOrEqual(
          1e-4,
        );
      }),
      few,
    );
  });

  it("reads lower the hotter it is", () => {
    fc.assert(
      fc.property(
        baseline,
        celsius,
        fc.double({ min: 1, max: 20, noNaN: true }),
        word,
        alkalinity,
        (read, from, more, builder, water) => {
          const to = Math.min(80, from + more);
          expect(ask("PHAT", read, from, to, builder, labFigure(water), "metric")).toBeLessThan(read);
        },
      ),
      few,
    );
  });

  it("rises with its dose, and the dose is found again from the pH", () => {
    fc.assert(
      fc.property(
        reachable,
        lukewarm,
        word,
        alkalinity,
        fc.double({ min: 1.05, max: 3, noNaN: true }),
        (read, at, builder, water, times) => {
          const higher = ask("PHATDOSE", 1, read, times, builder, at, labFigure(water), "metric");
          expect(higher).toBeGreaterThan(read);
          expect(
            ask("DOSEATPH", 1, read, higher, builder, at, labFigure(water), null, null, "metric") / times,
          ).toBeCloseTo(1, 3);
        },
      ),
      few,
    );
  });

  it("takes more acid the lower the target", () => {
    fc.assert(
      fc.property(
        reachable,
        cooled,
        word,
        fc.constantFrom("citric", "hydrochloric", "sulfuric", "sodium bisulfate"),
        (read, at, builder, acid) => {
          const amounts = [read, 10, 9, 8, 7, 6].map((target) =>
            ask("ACIDTO", 100, read, target, acid, builder, at, null, null, "metric"),
          );
          expect(amounts[0]).toBe(0);
          expect(amounts).toEqual([...amounts].sort((first, second) => first - second));
          expect(amounts.at(-1)).toBeGreaterThan(0);
        },
      ),
      few,
    );
  });
});

describe("a top-up", () => {
  const bathOf = (opened: number, at: number, builder: string, water: number | null): Bath => ({
    baseline: ph(opened),
    temperature: kelvin(celsiusZero + at),
    builder: builderFromWord(builder),
    alkalinity: water === null ? undefined : alkalinityOf(water / 50.043),
  });

  it("is ordered low, best, high, never negative, and begins with no more than the best; more than the opening dose is refused", () => {
    fc.assert(
      fc.property(baseline, drop, celsius, maybeUnknown, fc.option(alkalinity), (opened, fall, at, builder, water) => {
        const lab = water === null ? null : labFigure(water);
        const cells = [4, opened, opened - fall, builder, at, lab, null, null, null, null, "metric"];
        const share = topUpShare(bathOf(opened, at, builder, water), ph(opened - fall), { accuracy: 0.05 });
        expect(share.low).toBeGreaterThanOrEqual(0);
        expect(share.best).toBeGreaterThanOrEqual(share.low);
        expect(share.high).toBeGreaterThanOrEqual(share.best);
        if (share.best > 1) {
          expect(() => spill("TOPUPRANGE", ...cells)).toThrow(/times the opening dose/);
          return;
        }
        const [low = Number.NaN, best = Number.NaN, high = Number.NaN, first = Number.NaN] = spill(
          "TOPUPRANGE",
          ...cells,
        );
        expect(best).toBeCloseTo(4 * share.best, 3);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(best).toBeGreaterThanOrEqual(low);
        expect(high).toBeGreaterThanOrEqual(best);
        expect(high).toBeLessThanOrEqual(4);
        expect(first).toBeLessThanOrEqual(best);
      }),
      few,
    );
  });

  it("shrinks to nothing as the reading nears the baseline", () => {
    fc.assert(
      fc.property(baseline, drop, celsius, maybeUnknown, alkalinity, (opened, fall, at, builder, water) => {
        const shares = [fall, fall / 2, fall / 4, 0].map(
          (by) => topUpShare(bathOf(opened, at, builder, water), ph(opened - by)).best,
        );
        expect(shares).toEqual([...shares].sort((first, second) => second - first));
        expect(shares.at(-1)).toBe(0);
      }),
      few,
    );
  });

  it("brings the bath back to its baseline when it is added and the bath is solved again", () => {
    fc.assert(
      fc.property(
        reachable,
        drop,
        lukewarm,
        word,
        alkalinity,
        fc.constantFrom("acid", "carbon dioxide"),
        (opened, fall, at, builder, water, loss) => {
          const temperature = kelvin(celsiusZero + at);
          const tested = waterFromTests({ alkalinity: equivalentsPerKilogram(water / 50_043) });
          for (const bath of anchoredBaths({
            baseline: ph(opened),
            temperature,
            builder: builderFromWord(builder),
            water: tested,
          })) {
            const spent = afterLoss(bath, ph(opened - fall), loss);
            expect(Math.abs(phOf(spent, temperature) - (opened - fall))).toBeLessThanOrEqual(1e-3);
            const restored = toppedUp(bath, spent, topUpTo(bath, spent, bath.baseline));
            expect(Math.abs(phOf(restored, temperature) - opened)).toBeLessThanOrEqual(1e-3);
          }
        },
      ),
      few,
    );
  });
});
