import type { Kelvin, PH } from "../units/quantity.ts";
import type { Composition } from "./composition.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { beginSweep, sweepPH } from "./equilibrium/sweep.ts";
import { checkComposition, checkTemperature } from "./limits.ts";

/**
 * pH of a solution closed to air at 1 atm. Throws `invalid` for totals or temperature out of range and
 * `no-answer` when the calculation does not settle. Source: the constants' files.
 */
export function phOf(totals: Composition, temperature: Kelvin, solids: Solids = "none"): PH {
  checkComposition(totals);
  checkTemperature(temperature);
  return sweepPH(beginSweep(totals, temperature, solids), totals);
}
