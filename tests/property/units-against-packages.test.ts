import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { convert } from "../../src/core/units/unit-conversion.ts";
import { runs } from "../setup/random-runs.ts";
import { unitPackages } from "./units-of-packages.ts";

/** Factors by definition agree to the last bits of a double. */
const exact = 1e-12;

const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
/** Zeros of the scales lie up to 460 apart, so a difference counts against that. */
const zeroOfScales = 460;

function ours(value: number, from: string, to: string): number {
  const conversion = convert(value, from, to);
  if (conversion.converted !== "value") throw new RangeError(`${from} to ${to}`);
  return conversion.value;
}

describe.each(unitPackages)("conversions beside $name", ({ units, convert: theirs, rounded }) => {
  it.each(Object.entries(units))("agree for every %s", (kind, names) => {
    const symbols = Object.keys(names);
    fc.assert(
      fc.property(size, fc.constantFrom(...symbols), fc.constantFrom(...symbols), (value, from, to) => {
        const expected = theirs(value, names[from] ?? from, names[to] ?? to);
        const scale = kind === "temperature" ? Math.abs(expected) + zeroOfScales : Math.abs(expected);
        const precision = from === to ? exact : exact + (rounded[from] ?? 0) + (rounded[to] ?? 0);
        expect(Math.abs(ours(value, from, to) - expected), `${value} ${from} to ${to}`).toBeLessThanOrEqual(
          precision * scale,
        );
      }),
      runs(500),
    );
  });
});
