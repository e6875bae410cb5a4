import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { fromSi, toSi } from "../../src/core/units/convert.ts";
import { findUnit } from "../../src/core/units/find-unit.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import { parseStrength } from "../../src/core/units/parse-strength.ts";
import { convert } from "../../src/core/units/unit-conversion.ts";
import { unitSystems } from "../../src/core/units/unit-system.ts";
import { unitTable } from "../../src/core/units/unit-table.ts";
import { runs } from "../setup/random-runs.ts";

const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe("the unit table", () => {
  it("comes back to the number after going to SI and back, in every unit", () => {
    for (const unit of unitTable) {
      fc.assert(
        fc.property(positive, (value) => {
          expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value));
        }),
        runs(30),
      );
    }
  });

  it("finds every symbol, name and other spelling as its own unit, in every system", () => {
    for (const unit of unitTable) {
      for (const word of [unit.symbol, unit.name, ...unit.spellings]) {
        for (const system of unitSystems) {
          const search = findUnit(word, unit.kind, system);
          expect(search.found === "unit" && search.unit.symbol, `${word} of ${unit.kind}`).toBe(unit.symbol);
        }
      }
    }
  });

  it("has one unit of a kind per symbol", () => {
    const keys = unitTable.map(({ kind, symbol }) => `${kind} ${symbol}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("converts there and back to the same number between any two units of a kind", () => {
    fc.assert(
      fc.property(fc.constantFrom(...unitTable), fc.constantFrom(...unitTable), positive, (a, b, value) => {
        if (a.kind !== b.kind) return;
        const there = convert(value, a.symbol, b.symbol);
        if (there.converted !== "value") throw new RangeError(`${a.symbol} to ${b.symbol}`);
        const back = convert(there.value, b.symbol, a.symbol);
        if (back.converted !== "value") throw new RangeError(`${b.symbol} to ${a.symbol}`);
        expect(Math.abs(back.value - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value) ** 2);
      }),
    );
  });

  it("gives whole degrees Celsius back from Fahrenheit without noise, 0 as 0", () => {
    fc.assert(
      fc.property(fc.integer({ min: -27, max: 200 }), (tens) => {
        expect(convert(18 * tens + 32, "°F", "°C")).toEqual({ converted: "value", value: 10 * tens });
        expect(convert(10 * tens, "°C", "°F")).toEqual({ converted: "value", value: 18 * tens + 32 });
      }),
    );
  });
});

describe("numbers in text", () => {
  it("reads every number that it is shown with a point, with a comma or in groups of three", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999_999 }), fc.integer({ min: 0, max: 99 }), (whole, cents) => {
        const decimals = String(cents).padStart(2, "0");
        const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, " ");
        const value = Number(`${String(whole)}.${decimals}`);
        for (const text of [
          `${String(whole)}.${decimals}`,
          `${String(whole)},${decimals}`,
          `${grouped}.${decimals}`,
          `${grouped},${decimals}`,
        ]) {
          expect(parseNumber(text)).toEqual({ read: "number", value });
        }
      }),
    );
  });

  it("refuses a lone comma before three digits and shows both readings", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }), (left, right) => {
        const digits = String(right).padStart(3, "0");
        expect(parseNumber(`${String(left)},${digits}`)).toEqual({
          read: "ambiguous",
          readings: [Number(`${String(left)}.${digits}`), Number(`${String(left)}${digits}`)],
        });
      }),
    );
  });
});

describe("strengths in text", () => {
  it("reads 1+N, 1:N and 1 in N+1 as the same strength", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (water) => {
        const texts = [`1+${String(water)}`, `1:${String(water)}`, `1 : ${String(water)}`, `1 in ${String(water + 1)}`];
        for (const text of texts)
          expect(parseStrength(text, "US")).toEqual({ read: "strength", fraction: 1 / (1 + water) });
      }),
    );
  });
});
