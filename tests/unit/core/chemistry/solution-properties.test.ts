import * as fc from "fast-check";
import { describe, expect, it } from "vitest";

import { acidToReach } from "../../../../src/core/chemistry/acid-to-reach.ts";
import type { Composition } from "../../../../src/core/chemistry/composition.ts";
import { composition } from "../../../../src/core/chemistry/composition.ts";
import { beginSweep, sweepPH } from "../../../../src/core/chemistry/equilibrium/sweep.ts";
import { phOf } from "../../../../src/core/chemistry/ph-of.ts";
import type { Solution } from "../../../../src/core/chemistry/solve.ts";
import { solve } from "../../../../src/core/chemistry/solve.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";
import { anyComposition, anyTemperature } from "./random-solution.ts";

const amountOf = (solution: Solution, contains: RegExp): number =>
  solution.species.filter((one) => contains.test(one.formula)).reduce((sum, one) => sum + one.amount, 0);

const solids = fc.constantFrom("none" as const, "calcite and brucite" as const);

describe("any solution", () => {
  it("closes its charge balance", () => {
    fc.assert(
      fc.property(anyComposition(0.5), anyTemperature, solids, (totals, temperature, mayForm) => {
        const { species } = solve(totals, temperature, mayForm);
        const charge = species.reduce((sum, one) => sum + one.charge * one.amount, 0);
        const charges = species.reduce((sum, one) => sum + Math.abs(one.charge) * one.amount, 0);
        expect(Math.abs(charge)).toBeLessThanOrEqual(1e-6 * charges);
      }),
    );
  });

  it("keeps all calcium, magnesium and EDTA among its species and solids", () => {
    fc.assert(
      fc.property(anyComposition(0.5), anyTemperature, solids, (totals, temperature, mayForm) => {
        const solution = solve(totals, temperature, mayForm);
        const everything = Object.values(totals).reduce((sum, total) => sum + total, 0);
        const kept = (found: number, total: number): void => {
          expect(Math.abs(found - total)).toBeLessThanOrEqual(1e-6 * everything + 1e-14);
        };
        kept(amountOf(solution, /^Ca/) + solution.calcite.formed, totals.calcium);
        kept(amountOf(solution, /^Mg/) + solution.brucite.formed, totals.magnesium);
        kept(amountOf(solution, /EDTA/), totals.edta);
        kept(amountOf(solution, /CO3|CO2/) + solution.calcite.formed, totals.carbonate);
      }),
    );
  });

  it("holds a trace of a solid just past saturation and none just before, in a strong solution too", () => {
    const totals = composition({
      potassium: 0.5,
      calcium: 0.0005,
      sulfate: 0.005583825555930423,
      carbonate: 0.4020495184652477,
      citrate: 0.0005,
      edta: 0.0005,
      monoethanolamine: 0.5,
      acetate: 0.033605419068903214,
    });
    const withCalcium = (share: number): Solution =>
      solve({ ...totals, calcium: share * totals.calcium }, kelvin(348.15), "calcite and brucite");
    const { calcite, ionicStrength } = withCalcium(1);
    expect(ionicStrength).toBeGreaterThan(0.5);
    expect(calcite.saturationIndex).toBeCloseTo(0, 9);
    expect(calcite.formed).toBeGreaterThan(0);
    // Nearly all calcium beyond saturation falls out, so 0.1 % more calcium is as much more calcite.
    expect(withCalcium(1.001).calcite.formed - calcite.formed).toBeCloseTo(0.001 * totals.calcium, 8);
    expect(withCalcium(0.995).calcite.formed).toBe(0);
    expect(withCalcium(0.995).calcite.saturationIndex).toBeLessThan(0);
  });

  it("is a set of finite numbers, with no solid left to form where solids may form", () => {
    fc.assert(
      fc.property(anyComposition(1), anyTemperature, solids, (totals, temperature, mayForm) => {
        const solution = solve(totals, temperature, mayForm);
        const figures = [
          solution.pH,
          solution.ionicStrength,
          solution.alkalinities.phenolphthalein,
          solution.alkalinities.total,
          solution.bufferIntensity,
          ...solution.species.map((one) => one.amount),
        ];
        expect(figures.every(Number.isFinite)).toBe(true);
        if (mayForm === "none") return;
        expect(solution.calcite.saturationIndex ?? 0).toBeLessThanOrEqual(1e-5);
        expect(solution.brucite.saturationIndex ?? 0).toBeLessThanOrEqual(1e-5);
        expect(Math.min(solution.calcite.formed, solution.brucite.formed)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  it("rises in pH with every addition of strong base", () => {
    fc.assert(
      fc.property(
        anyComposition(0.3),
        anyTemperature,
        fc.double({ min: 1e-3, max: 0.2, noNaN: true }),
        (totals, temperature, base) => {
          const more: Composition = { ...totals, sodium: totals.sodium + base };
          expect(phOf(more, temperature)).toBeGreaterThan(phOf(totals, temperature));
        },
      ),
    );
  });

  it("returns to a pH when the acid that leads to it is added", () => {
    fc.assert(
      fc.property(
        anyComposition(0.1),
        anyTemperature,
        fc.double({ min: 2, max: 12, noNaN: true }),
        (totals, temperature, target) => {
          const acid = acidToReach(totals, temperature, ph(target));
          fc.pre(acid >= 0);
          expect(Math.abs(phOf({ ...totals, chloride: totals.chloride + acid }, temperature) - target)).toBeLessThan(
            1e-7,
          );
        },
      ),
    );
  });

  it("has a pH that a second pass from the answer moves by less than 1e-7", () => {
    fc.assert(
      fc.property(anyComposition(0.5), anyTemperature, solids, (totals, temperature, mayForm) => {
        const sweep = beginSweep(totals, temperature, mayForm);
        const first = sweepPH(sweep, totals);
        expect(Math.abs(sweepPH(sweep, totals) - first)).toBeLessThan(1e-7);
      }),
    );
  });

  it("has a positive buffer intensity", () => {
    fc.assert(
      fc.property(anyComposition(0.3), anyTemperature, (totals, temperature) => {
        expect(solve(totals, temperature).bufferIntensity).toBeGreaterThan(0);
      }),
    );
  });

  it("gives the same answer to the last digit whatever was solved before it", () => {
    fc.assert(
      fc.property(
        anyComposition(0.5),
        anyComposition(0.5),
        anyTemperature,
        anyTemperature,
        (totals, other, temperature, elsewhere) => {
          const first = phOf(totals, temperature);
          phOf(other, elsewhere);
          phOf({ ...totals, sodium: totals.sodium * 0.7 }, elsewhere);
          expect(phOf(totals, temperature)).toBe(first);
        },
      ),
    );
  });
});

describe("pure water", () => {
  it("has half of its ionization as pH", () => {
    // IAPWS R11-07: 13.9945 at 25 °C, 13.0201 at 60 °C.
    expect(phOf(composition({}), kelvin(298.15))).toBeCloseTo(13.9945 / 2, 3);
    expect(phOf(composition({}), kelvin(333.15))).toBeCloseTo(13.0201 / 2, 3);
  });
});
