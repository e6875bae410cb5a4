import type { EquivalentsPerKilogram, Kelvin, PH } from "../units/quantity.ts";
import { equivalentsPerKilogram } from "../units/quantity.ts";
import type { Composition } from "./composition.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { beginSweep, sweepAcid } from "./equilibrium/sweep.ts";
import { checkComposition, checkPH, checkTemperature } from "./limits.ts";

/**
 * Strong acid that brings a solution to a pH at a temperature, closed to air; negative where it takes
 * strong base instead. Throws `invalid` for arguments out of range.
 */
export function acidToReach(
  totals: Composition,
  temperature: Kelvin,
  target: PH,
  solids: Solids = "none",
): EquivalentsPerKilogram {
  checkComposition(totals);
  checkTemperature(temperature);
  checkPH(target, "Target pH");
  return equivalentsPerKilogram(sweepAcid(beginSweep(totals, temperature, solids), totals, target));
}
