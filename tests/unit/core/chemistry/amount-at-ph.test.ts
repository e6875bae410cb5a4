import * as fc from "fast-check";
import { describe, expect, it } from "vitest";

import { amountAtPH } from "../../../../src/core/chemistry/amount-at-ph.ts";
import { combine, composition } from "../../../../src/core/chemistry/composition.ts";
import { phOf } from "../../../../src/core/chemistry/ph-of.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** An alkaline concentrate, a water with or without hardness, a pH to reach. */
const question = fc.record({
  silicate: share,
  phosphate: share,
  edta: share,
  alkalinity: fc.double({ min: 0, max: 0.006, noNaN: true }),
  hardness: fc.double({ min: 0, max: 0.003, noNaN: true }),
  celsius: fc.double({ min: 10, max: 70, noNaN: true }),
  target: fc.double({ min: 9.5, max: 11.5, noNaN: true }),
});

describe("the amount that gives a pH", () => {
  it("gives that pH, and is the same by the quick search and along chords", () => {
    fc.assert(
      fc.property(question, ({ silicate, phosphate, edta, alkalinity, hardness, celsius, target }) => {
        const base = composition({
          sodium: alkalinity,
          carbonate: alkalinity,
          calcium: hardness / 2,
          magnesium: hardness / 4,
          chloride: 1.5 * hardness,
        });
        const direction = composition({
          sodium: 1 + 2 * silicate + 3 * phosphate + 4 * edta,
          silicate,
          phosphate,
          edta,
        });
        const temperature = kelvin(celsius + 273.15);
        const asked = {
          base,
          direction,
          effect: "raises",
          temperature,
          target: ph(target),
          guess: 0.01,
          most: 1,
        } as const;
        const amount = amountAtPH({ ...asked, solids: "none" });
        if (amount === undefined) throw new Error("No amount found");
        fc.pre(amount > 0);
        expect(phOf(combine(1, base, amount, direction), temperature)).toBeCloseTo(target, 5);
        // Neither solid can form without metals, so this question takes the other way to the same answer.
        const soft = { ...asked, base: composition({ sodium: alkalinity, carbonate: alkalinity }) };
        const quick = amountAtPH({ ...soft, solids: "none" });
        const slow = amountAtPH({ ...soft, solids: "calcite and brucite" });
        expect((quick ?? Number.NaN) / (slow ?? Number.NaN)).toBeCloseTo(1, 4);
      }),
    );
  });

  it("is nothing where the base is there already, and undefined out of reach", () => {
    const lye = composition({ sodium: 0.01 });
    const asked = {
      base: lye,
      direction: lye,
      effect: "raises",
      temperature: kelvin(298.15),
      solids: "none",
      guess: 0.5,
      most: 10,
    } as const;
    expect(amountAtPH({ ...asked, target: ph(11) })).toBe(0);
    expect(amountAtPH({ ...asked, target: ph(14) })).toBeUndefined();
  });
});
