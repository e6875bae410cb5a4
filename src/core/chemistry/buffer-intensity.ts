import type { EquivalentsPerKilogram, Kelvin, PH } from "../units/quantity.ts";
import { equivalentsPerKilogram, ph } from "../units/quantity.ts";
import type { Composition } from "./composition.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { beginSweep, sweepAcid } from "./equilibrium/sweep.ts";

/** Half the width of the central difference. */
const halfWidth = 0.005; // pH

/**
 * Strong base, or acid, per unit of pH about a pH, eq/kg. Either adds to ionic strength, so that the figure
 * lies up to 2 % above that of a bath from which salt were taken away.
 */
export function bufferIntensity(
  totals: Composition,
  temperature: Kelvin,
  at: PH,
  solids: Solids,
): EquivalentsPerKilogram {
  const sweep = beginSweep(totals, temperature, solids);
  const below = sweepAcid(sweep, totals, ph(at - halfWidth));
  const above = sweepAcid(sweep, totals, ph(at + halfWidth));
  return equivalentsPerKilogram((below - above) / (2 * halfWidth));
}
