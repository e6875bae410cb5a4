import * as fc from "fast-check";

import type { Composition } from "../../../../src/core/chemistry/composition.ts";
import { componentNames, composition } from "../../../../src/core/chemistry/composition.ts";
import type { Kelvin } from "../../../../src/core/units/quantity.ts";
import { kelvin } from "../../../../src/core/units/quantity.ts";

/** Absent, or anything from a trace to `most`, each order of magnitude alike. */
const total = (most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constant(0),
    fc.double({ min: Math.log(1e-12), max: Math.log(most), noNaN: true }).map(Math.exp),
    fc.double({ min: most / 1000, max: most, noNaN: true }),
  );

export function anyComposition(most: number): fc.Arbitrary<Composition> {
  return fc
    .array(total(most), { minLength: componentNames.length, maxLength: componentNames.length })
    .map((totals) => composition(Object.fromEntries(componentNames.map((name, index) => [name, totals[index] ?? 0]))));
}

export const anyTemperature: fc.Arbitrary<Kelvin> = fc.double({ min: 273.15, max: 348.15, noNaN: true }).map(kelvin);
