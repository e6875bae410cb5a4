/**
 * The bands of the bath model against baths computed with the equilibrium program PHREEQC (USGS) and
 * its database with phosphate, borate and citrate constants of Goldberg, Kishore and Lennen 2002:
 * three recipes in purified water (about 7 mg/L alkalinity), softened and hard water (200 mg/L).
 */
import { describe, expect, it } from "vitest";
import { alkalinity, kelvin, ph } from "../../src/core/units/quantity.ts";
import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { currentModel } from "../../src/core/bath/current-model.ts";
import { losses } from "../../src/core/bath/bath-model.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";
import type { Alkalinity } from "../../src/core/units/quantity.ts";
import type { Builder } from "../../src/core/solution/builder.ts";

const unknown: Builder = { known: "word", word: "unknown" };
const hydroxide: Builder = { known: "word", word: "hydroxide" };
const temperature = (celsius: number) => kelvin(celsius + celsiusZero);
const waters: Readonly<Record<string, Alkalinity>> = {
  purified: alkalinity(0.13),
  softened: alkalinity(4.04),
  hard: alkalinity(4.04),
};

describe("the band of a heated bath", () => {
  const rows = readCsv("heated-baths.csv");

  for (const knowsWater of [false, true]) {
    it(`encloses every bath read hot, ${knowsWater ? "with" : "without"} the water's alkalinity`, () => {
      const buffered = rows.filter((row) => textIn(row, "builder") !== "hydroxide");
      expect(buffered.length).toBe(36);
      for (const row of buffered) {
        const water = knowsWater ? waters[textIn(row, "water")] : undefined;
        const band = currentModel.phAt(
          { builder: unknown, alkalinity: water },
          ph(numberIn(row, "ph_at_25")),
          temperature(25),
          temperature(numberIn(row, "celsius")),
        );
        expect(numberIn(row, "ph")).toBeGreaterThanOrEqual(band.low - 0.003);
        expect(numberIn(row, "ph")).toBeLessThanOrEqual(band.high + 0.003);
      }
    });
  }

  it("is within 0.01 of plain sodium hydroxide", () => {
    const plain = rows.filter((row) => textIn(row, "builder") === "hydroxide");
    expect(plain.length).toBe(6);
    for (const row of plain) {
      const { low, best, high } = currentModel.phAt(
        { builder: hydroxide, alkalinity: undefined },
        ph(numberIn(row, "ph_at_25")),
        temperature(25),
        temperature(numberIn(row, "celsius")),
      );
      expect(Math.abs(best - numberIn(row, "ph"))).toBeLessThanOrEqual(0.01);
      expect([low, high]).toEqual([best, best]);
    }
  });

  it("comes back to the reading when the bath cools again", () => {
    const cold = ph(11.3);
    const { low, high } = currentModel.phAt({ builder: unknown, alkalinity: undefined }, cold, temperature(25), temperature(55));
    const bath = { builder: unknown, alkalinity: undefined };
    expect(currentModel.phAt(bath, ph(high), temperature(55), temperature(25)).low).toBeCloseTo(11.3, 6);
    expect(currentModel.phAt(bath, ph(low), temperature(55), temperature(25)).high).toBeCloseTo(11.3, 6);
  });
});

describe("the band of a top-up", () => {
  it("encloses every half-point top-up at 45 °C, after acid and after dilution", () => {
    const rows = readCsv("top-ups.csv");
    expect(rows.length).toBe(18);
    for (const row of rows) {
      const loss = losses.find((word) => word === textIn(row, "loss"));
      for (const water of [undefined, waters[textIn(row, "water")]]) {
        const band = currentModel.topUpShare({
          builder: unknown,
          alkalinity: water,
          baseline: ph(numberIn(row, "baseline")),
          reading: ph(numberIn(row, "reading")),
          temperature: temperature(numberIn(row, "celsius")),
          loss,
        });
        expect(numberIn(row, "share_of_opening_dose")).toBeGreaterThanOrEqual(band.low);
        expect(numberIn(row, "share_of_opening_dose")).toBeLessThanOrEqual(band.high);
      }
    }
  });

  it("encloses what a diluted bath lacks, for every pair of doses up to one pH apart at 25, 45 and 60 °C", () => {
    const rows = readCsv("ph-over-dose.csv");
    let pairs = 0;
    for (const full of rows) {
      for (const weak of rows) {
        const sameBath = ["builder", "water", "celsius"].every((field) => full[field] === weak[field]);
        const fall = numberIn(full, "ph") - numberIn(weak, "ph");
        if (!sameBath || fall <= 0 || fall > 1) continue;
        pairs += 1;
        const lacking = 1 - numberIn(weak, "dose") / numberIn(full, "dose");
        const band = currentModel.topUpShare({
          builder: unknown,
          alkalinity: waters[textIn(full, "water")],
          baseline: ph(numberIn(full, "ph")),
          reading: ph(numberIn(weak, "ph")),
          temperature: temperature(numberIn(full, "celsius")),
          loss: "dilution",
        });
        const where = JSON.stringify([full, weak, band]);
        expect(lacking, where).toBeGreaterThanOrEqual(band.low - 0.005);
        expect(lacking, where).toBeLessThanOrEqual(band.high + 0.015);
      }
    }
    expect(pairs).toBeGreaterThan(80);
  });
});
