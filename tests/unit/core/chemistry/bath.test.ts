import { describe, expect, it } from "vitest";

import { anchoredBaths } from "../../../../src/core/bath/model/bath-question.ts";
import {
  builderFromWeights,
  builderFromWord,
  builderWords,
  unknownBuilder,
} from "../../../../src/core/bath/model/builder.ts";
import { estimateDoseAtPH, estimatePHAtDose } from "../../../../src/core/bath/model/estimate-dose.ts";
import { estimateReadingAt } from "../../../../src/core/bath/model/estimate-reading.ts";
import { estimateTopUp } from "../../../../src/core/bath/model/estimate-top-up.ts";
import { waterFromTests } from "../../../../src/core/bath/model/water.ts";
import { composition } from "../../../../src/core/chemistry/composition.ts";
import { phOf } from "../../../../src/core/chemistry/ph-of.ts";
import { DomainError } from "../../../../src/core/limits/domain-error.ts";
import { equivalentsPerKilogram, ph } from "../../../../src/core/units/quantity.ts";
import { bathOf, celsius, onlyBath, softened } from "./opened-baths.ts";

describe("a calibrated bath", () => {
  it.each(builderWords)("gives its baseline (%s)", (word) => {
    const bath = onlyBath(bathOf(builderFromWord(word)));
    expect(phOf(bath.opening, bath.temperature)).toBeCloseTo(11.3, 5);
  });

  it("does not depend on how the data sheet scales its percentages", () => {
    const sheet = (scale: number) =>
      builderFromWeights([
        { chemical: "sodium metasilicate", amount: 6 * scale },
        { chemical: "potassium hydroxide", amount: 2 * scale },
      ]);
    const once = estimateTopUp(bathOf(sheet(1)), ph(10.9));
    const twice = estimateTopUp(bathOf(sheet(2)), ph(10.9));
    expect(twice.best).toBeCloseTo(once.best, 5);
    expect(twice.high).toBeCloseTo(once.high, 5);
  });

  it("refuses a baseline that the water alone has, and one that no strength reaches", () => {
    expect(() => anchoredBaths(bathOf(builderFromWord("silicate"), { baseline: ph(7) }))).toThrow(
      /not above what the water/,
    );
    expect(() => anchoredBaths(bathOf(builderFromWord("carbonate"), { baseline: ph(14) }))).toThrow(
      /does not reach pH 14/,
    );
    expect(() => anchoredBaths(bathOf(unknownBuilder, { baseline: ph(15) }))).toThrow(/Baseline pH is 15/);
  });

  it("leaves out the builders that cannot have given the baseline", () => {
    const strong = anchoredBaths(bathOf(unknownBuilder, { baseline: ph(13.5), temperature: celsius(25) }));
    expect(strong.length).toBeGreaterThan(0);
    expect(strong.length).toBeLessThan(4);
  });
});

describe("a reading at another temperature", () => {
  it("is the baseline at the baseline's own temperature", () => {
    const estimate = estimateReadingAt(bathOf(unknownBuilder), ph(11.3), celsius(45));
    expect(estimate.low).toBeCloseTo(11.3, 4);
    expect(estimate.high).toBeCloseTo(11.3, 4);
  });

  it("falls by about half a point on heating from 25 to 40 °C, with nothing lost", () => {
    // 10.84 to 10.92 for a bath at pH 11.30 and 25 °C: PHREEQC, see heated-baths.csv.
    const estimate = estimateReadingAt(bathOf(unknownBuilder, { temperature: celsius(25) }), ph(11.3), celsius(40));
    expect(estimate.low).toBeGreaterThan(10.83);
    expect(estimate.high).toBeLessThan(10.93);
    expect(estimate.best).toBeGreaterThanOrEqual(estimate.low);
    expect(estimate.best).toBeLessThanOrEqual(estimate.high);
  });
});

describe("a top-up", () => {
  it("is nothing at or above the baseline", () => {
    expect(estimateTopUp(bathOf(unknownBuilder), ph(11.3))).toEqual({ low: 0, best: 0, high: 0 });
    expect(estimateTopUp(bathOf(unknownBuilder), ph(11.6), "acid").best).toBe(0);
  });

  it("grows as the reading falls", () => {
    const shares = [11.2, 11, 10.8, 10.5, 10, 9].map(
      (reading) => estimateTopUp(bathOf(builderFromWord("silicate")), ph(reading)).best,
    );
    expect(shares).toEqual([...shares].sort((first, second) => first - second));
  });

  it("lies within its range, which a known builder and dose make narrower", () => {
    const wide = estimateTopUp(bathOf(unknownBuilder), ph(10.8));
    const tested = { openingShare: 0.02, water: { likely: softened.likely } };
    const narrow = estimateTopUp(bathOf(builderFromWord("silicate"), tested), ph(10.8));
    for (const { low, best, high } of [wide, narrow]) {
      expect(low).toBeLessThanOrEqual(best);
      expect(best).toBeLessThanOrEqual(high);
    }
    expect(narrow.high - narrow.low).toBeLessThan(wide.high - wide.low);
  });

  it("needs more after acid than after dilution", () => {
    for (const word of builderWords) {
      const bath = bathOf(builderFromWord(word));
      expect(estimateTopUp(bath, ph(10.8), "acid").best).toBeGreaterThanOrEqual(
        estimateTopUp(bath, ph(10.8), "dilution").best - 1e-6,
      );
    }
  });

  it("falls back on acid where dilution cannot have led to the reading", () => {
    const bath = bathOf(builderFromWord("silicate"));
    expect(() => estimateTopUp(bath, ph(7), "dilution")).toThrow(/Dilution with this water/);
    expect(estimateTopUp(bath, ph(7)).best).toBeGreaterThan(0);
  });

  it("is the same however often and in whatever order it is asked", () => {
    const first = estimateTopUp(bathOf(unknownBuilder), ph(10.77));
    for (let index = 0; index < 300; index += 1)
      estimateTopUp(bathOf(builderFromWord("silicate")), ph(10.5 + index / 1000));
    expect(estimateTopUp(bathOf(unknownBuilder), ph(10.77))).toEqual(first);
  });
});

describe("another dose", () => {
  it("gives the known pH at the known dose, and less or more on either side", () => {
    const bath = bathOf(unknownBuilder);
    expect(estimatePHAtDose(bath, 1).best).toBeCloseTo(11.3, 4);
    expect(estimatePHAtDose(bath, 0.5).high).toBeLessThan(11.3);
    expect(estimatePHAtDose(bath, 2).low).toBeGreaterThan(11.3);
  });

  it.each(builderWords)("is found again from the pH it gives (%s)", (word) => {
    const bath = bathOf(builderFromWord(word));
    for (const times of [0.2, 0.9, 3]) {
      expect(estimateDoseAtPH(bath, ph(estimatePHAtDose(bath, times).best)).best).toBeCloseTo(times, 4);
    }
  });

  it("is refused below nothing", () => {
    expect(() => estimatePHAtDose(bathOf(unknownBuilder), -1)).toThrow(DomainError);
  });
});

describe("a top-up where the volume of the opening dose is not known", () => {
  it.each([...builderWords])("lies in a range that covers doses of one to three parts in a hundred (%s)", (word) => {
    const baseline = ph(word === "carbonate" ? 10.6 : 11.3);
    const range = estimateTopUp(bathOf(builderFromWord(word), { baseline }), ph(10.4));
    for (const openingShare of [0.01, 0.03]) {
      const known = estimateTopUp(bathOf(builderFromWord(word), { baseline, openingShare }), ph(10.4));
      expect(known.low).toBeGreaterThanOrEqual(range.low);
      expect(known.high).toBeLessThanOrEqual(range.high);
    }
  });
});

describe("a water from its tests", () => {
  it("is sodium bicarbonate without a hardness test, and carries the hardness otherwise", () => {
    expect(softened.likely).toEqual(composition({ sodium: 0.003, carbonate: 0.003 }));
    const tested = waterFromTests({
      alkalinity: equivalentsPerKilogram(0.003),
      hardness: equivalentsPerKilogram(0.006),
    });
    const hard = tested.likely;
    expect(tested.otherwise.calcium).toBe(hard.calcium);
    expect(softened.otherwise.calcium).toBeGreaterThan(0);
    expect(2 * (hard.calcium + hard.magnesium)).toBeCloseTo(0.006, 12);
    expect(hard.chloride).toBeCloseTo(0.003, 12);
    expect(hard.sodium).toBe(0);
  });

  it("counts two thirds of a hardness as calcium, which is common practice without a source", () => {
    const { likely } = waterFromTests({
      alkalinity: equivalentsPerKilogram(0.003),
      hardness: equivalentsPerKilogram(0.006),
    });
    expect([likely.calcium, likely.magnesium]).toEqual([expect.closeTo(0.002, 12), expect.closeTo(0.001, 12)]);
    // Not tested, a hard supply may hold half as much hardness again as alkalinity, and a seventh of it as free carbon dioxide.
    const { otherwise } = waterFromTests({ alkalinity: equivalentsPerKilogram(0.0028) });
    expect([otherwise.calcium, otherwise.magnesium]).toEqual([expect.closeTo(0.0014, 12), expect.closeTo(0.0007, 12)]);
    expect([otherwise.carbonate, otherwise.chloride, otherwise.sodium]).toEqual([
      expect.closeTo(0.0032, 12),
      expect.closeTo(0.0014, 12),
      0,
    ]);
  });

  it("refuses figures that no supply has", () => {
    expect(() =>
      waterFromTests({ alkalinity: equivalentsPerKilogram(0.21), hardness: equivalentsPerKilogram(0.21) }),
    ).not.toThrow();
    expect(() => waterFromTests({ alkalinity: equivalentsPerKilogram(0.211) })).toThrow(/Alkalinity of the water/);
    expect(() => waterFromTests({ alkalinity: equivalentsPerKilogram(-1) })).toThrow(/Alkalinity of the water/);
    expect(() =>
      waterFromTests({ alkalinity: equivalentsPerKilogram(0), hardness: equivalentsPerKilogram(1) }),
    ).toThrow(/Hardness/);
  });
});

describe("a builder", () => {
  it("refuses an unknown word and a sheet without anything alkaline", () => {
    expect(() => builderFromWord("soap")).toThrow(/Builder is "soap"; allowed is hydroxide/);
    expect(() => builderFromWeights([{ chemical: "citric acid", amount: 5 }])).toThrow(/nothing alkaline/);
  });
});
