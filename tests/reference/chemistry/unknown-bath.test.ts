/**
 * What a shop asks that knows neither builder nor water, against baths computed with PHREEQC: three
 * recipes in purified, softened and hard water (README).
 */
import { describe, expect, it } from "vitest";

import type { Bath } from "../../../src/core/bath/bath.ts";
import { unknownBuilder } from "../../../src/core/bath/model/builder.ts";
import { readingAt } from "../../../src/core/bath/reading-at.ts";
import { topUp } from "../../../src/core/bath/top-up.ts";
import { verdict } from "../../../src/core/bath/verdict.ts";
import { celsiusZero } from "../../../src/core/units/exact-constants.ts";
import { alkalinity, cubicMeters, kelvin, ph } from "../../../src/core/units/quantity.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

const room = kelvin(celsiusZero + 25);
const waters = { pure: alkalinity(0), RO: alkalinity(0.16), soft: alkalinity(4.04), hard: alkalinity(4.04) };
const unknown = { builder: unknownBuilder, alkalinity: undefined };
const share = cubicMeters(1);

function waterOf(name: string) {
  if (name === "pure" || name === "RO" || name === "soft" || name === "hard") return waters[name];
  throw new RangeError(`No water ${name}`);
}

describe("a bath of unknown builder", () => {
  /** Every bath of the table stands at 25 °C first, then hot. */
  const baths = readTable("heated-baths").reduce<TableRow[][]>((groups, row) => {
    if (row.number("celsius") === 25) groups.push([]);
    groups.at(-1)?.push(row);
    return groups;
  }, []);
  const heated = baths.flatMap(([at25, ...hot]) =>
    at25 === undefined ? [] : hot.map((row) => ({ row, baseline: ph(at25.number("pH")) })),
  );

  it("reads hot within 0.06 of the range, with and without its water's alkalinity, and never 0.15 off the best figure where the water is known", () => {
    expect(heated.length).toBeGreaterThan(30);
    for (const { row, baseline } of heated) {
      for (const water of [undefined, waterOf(row.text("water"))]) {
        const bath: Bath = { ...unknown, alkalinity: water, baseline, temperature: room };
        const { low, best, high } = readingAt(bath, bath.baseline, temperatureOf(row));
        const where = JSON.stringify([
          row.text("recipe"),
          row.text("water"),
          row.number("celsius"),
          low,
          best,
          high,
          row.number("pH"),
        ]);
        expect(row.number("pH"), where).toBeGreaterThanOrEqual(low - 0.06);
        expect(row.number("pH"), where).toBeLessThanOrEqual(high + 0.06);
        if (water !== undefined) expect(Math.abs(best - row.number("pH")), where).toBeLessThanOrEqual(0.15);
      }
    }
  });

  it("takes a top-up within the range for every half-point loss, with and without its water's alkalinity", () => {
    const rows = readTable("top-ups").filter((row) => row.number("targetPH") === row.number("openingPH"));
    expect(rows.length).toBe(36);
    for (const row of rows) {
      for (const water of [undefined, waterOf(row.text("water"))]) {
        const bath: Bath = {
          ...unknown,
          alkalinity: water,
          baseline: ph(row.number("openingPH")),
          temperature: temperatureOf(row),
        };
        const { low, high } = topUp(share, bath, ph(row.number("pHAfterLoss")));
        const where = JSON.stringify([
          row.text("recipe"),
          row.text("water"),
          row.text("loss"),
          low,
          high,
          row.number("shareNeeded"),
        ]);
        expect(row.number("shareNeeded"), where).toBeGreaterThanOrEqual(low);
        expect(row.number("shareNeeded"), where).toBeLessThanOrEqual(high);
      }
    }
  });

  it("is never judged due by a hot reading when it has lost nothing", () => {
    for (const { row, baseline } of heated) {
      const temperatures = { baseline: room, reading: temperatureOf(row) };
      const asked = { builder: unknownBuilder, baseline, drop: 0.5, temperatures };
      const reading = ph(row.number("pH"));
      expect(verdict(reading, { ...asked, alkalinity: waterOf(row.text("water")) })).toBe("hold");
      expect(verdict(reading, { ...asked, alkalinity: undefined })).not.toBe("top up");
    }
  });
});
