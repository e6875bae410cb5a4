import type { EquivalentsPerKilogram, Kelvin } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";
import { acidToReach } from "./acid-to-reach.ts";
import type { Composition } from "./composition.ts";

/** The color changes of phenolphthalein and of bromocresol green with methyl red, the usual end points. */
const phenolphthaleinEnd = ph(8.3);
export const totalAlkalinityEnd = ph(4.5);

export interface Alkalinities {
  /** Strong acid to pH 8.3; negative where the solution is below it. */
  readonly phenolphthalein: EquivalentsPerKilogram;
  /** Strong acid to pH 4.5. */
  readonly total: EquivalentsPerKilogram;
}

/** What a titration at the solution's temperature would find, closed to air, nothing precipitating. */
export function alkalinities(totals: Composition, temperature: Kelvin): Alkalinities {
  return {
    phenolphthalein: acidToReach(totals, temperature, phenolphthaleinEnd),
    total: acidToReach(totals, temperature, totalAlkalinityEnd),
  };
}
