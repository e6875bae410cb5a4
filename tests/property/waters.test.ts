import fc from "fast-check";
import { describe, expect, it } from "vitest";

import type { CellInput } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { findFunction } from "../../functions/find-function.ts";
import { alkalinity, cubicMeters } from "../../src/core/units/quantity.ts";
import { alkalinitySplit } from "../../src/core/water/alkalinity-split.ts";
import { blend } from "../../src/core/water/blend.ts";
import { blendShare } from "../../src/core/water/blend-share.ts";
import { reverseOsmosisSplit } from "../../src/core/water/reverse-osmosis-split.ts";

const value = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 5000, noNaN: true }));
const volume = fc.double({ min: 1e-3, max: 1000, noNaN: true });
const waters = fc.array(fc.record({ value, volume: volume.map(cubicMeters) }), { minLength: 1, maxLength: 8 });
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

function near(actual: number, expected: number, relative = 1e-9): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(expected)));
}

function call(id: string, cells: readonly CellInput[]): number {
  const fn = findFunction(id);
  if (fn === undefined) throw new Error(`No function ${id}`);
  return Number(evaluate(fn, cells));
}

describe("a blend", () => {
  it("lies between its waters", () => {
    fc.assert(
      fc.property(waters, (list) => {
        const values = list.map((water) => water.value);
        const blended = blend(list);
        expect(blended).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-12));
        expect(blended).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-12));
      }),
    );
  });

  it("stays the same when every volume grows alike, or the waters come in another order", () => {
    fc.assert(
      fc.property(waters, fc.double({ min: 0.01, max: 9, noNaN: true }), (list, times) => {
        near(
          blend(list.map((water) => ({ value: water.value, volume: cubicMeters(water.volume * times) }))),
          blend(list),
        );
        near(blend(list.toReversed()), blend(list));
      }),
    );
  });

  it("made with the share that a target asks for has the target", () => {
    fc.assert(
      fc.property(value, value, share, (a, b, part) => {
        fc.pre(Math.abs(a - b) > 1e-3);
        const target = a + (b - a) * part;
        const ofB = blendShare(a, b, target);
        near(
          blend([
            { value: a, volume: cubicMeters(1 - ofB) },
            { value: b, volume: cubicMeters(ofB) },
          ]),
          target,
        );
      }),
    );
  });
});

describe("the split of an alkalinity", () => {
  it("is never below 0, adds up to the total, and never has hydroxide beside bicarbonate", () => {
    fc.assert(
      fc.property(value, fc.double({ min: 0, max: 1, noNaN: true }), (total, part) => {
        const { hydroxide, carbonate, bicarbonate } = alkalinitySplit(alkalinity(total * part), alkalinity(total));
        for (const each of [hydroxide, carbonate, bicarbonate]) expect(each).toBeGreaterThanOrEqual(0);
        near(hydroxide + carbonate + bicarbonate, total);
        expect(Math.min(hydroxide, bicarbonate)).toBe(0);
      }),
    );
  });

  it("takes as much acid to pH 8.3 as its hydroxide and half its carbonate", () => {
    fc.assert(
      fc.property(value, fc.double({ min: 0, max: 1, noNaN: true }), (total, part) => {
        const { hydroxide, carbonate } = alkalinitySplit(alkalinity(total * part), alkalinity(total));
        near(hydroxide + carbonate / 2, total * part);
      }),
    );
  });
});

describe("reverse osmosis", () => {
  it("loses nothing: what the feed brings leaves in permeate and reject water", () => {
    fc.assert(
      fc.property(value, share, fc.double({ min: 0, max: 1, noNaN: true }), (feed, recovery, rejection) => {
        const { permeate, reject, feedPerPermeate } = reverseOsmosisSplit(feed, recovery, rejection);
        near(permeate + reject * (feedPerPermeate - 1), feed * feedPerPermeate);
        expect(permeate).toBeLessThanOrEqual(feed);
        expect(reject).toBeGreaterThanOrEqual(feed * (1 - 1e-12));
      }),
    );
  });
});

describe("the three unit systems", () => {
  const usGallons = 3.785411784;
  const imperialGallons = 4.54609;

  it.each([
    ["ROUNDTANKVOLUME", ["24 in", "20 in", undefined]],
    ["SOFTENERLIFE", [8000, "11 gpg", 1.5, undefined]],
    ["JARDOSE", ["60 L", 3, 2, "1+40", undefined]],
  ])("give %s the same volume for the same text", (id, cells) => {
    const metric = call(id, [...cells, "metric"]);
    near(call(id, [...cells, "US"]) * usGallons, metric);
    near(call(id, [...cells, "imperial"]) * imperialGallons, metric);
  });

  it("take a round tank's inches and centimeters alike", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 100 }), (diameter, depth) => {
        near(
          call("ROUNDTANKVOLUME", [`${String(diameter * 2.54)} cm`, `${String(depth * 2.54)} cm`, undefined, "metric"]),
          call("ROUNDTANKVOLUME", [`${String(diameter)} in`, `${String(depth)} in`]) * usGallons,
        );
      }),
    );
  });

  it("take a jar test's bath alike, and scale the dose with it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), share, fc.integer({ min: 1, max: 9 }), (bath, whole, times) => {
        // A bath is never more concentrate than water, and a bare share over a tenth is asked about.
        const strength = `${String(whole * 50)}%`;
        const dose = call("JARDOSE", [bath, 2, 2, strength]);
        near(call("JARDOSE", [bath, 2, 2, strength, undefined, "metric"]), dose);
        near(call("JARDOSE", [bath * times, 2, 2, strength]), dose * times);
      }),
    );
  });

  it("take the index's temperature in the unit of the system", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (celsius) => {
        const fahrenheit = celsius * 1.8 + 32;
        near(call("LSI", [7.5, celsius, 150, 34, 320, "metric"]), call("LSI", [7.5, fahrenheit, 150, 34, 320]));
        near(call("LSI", [7.5, celsius, 150, 34, 320, "imperial"]), call("LSI", [7.5, fahrenheit, 150, 34, 320]));
      }),
    );
  });
});
