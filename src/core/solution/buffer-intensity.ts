import type { Composition } from "./composition.ts";
import { beginSweep, sweepAcid } from "./equilibrium/sweep.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { ph } from "./quantities.ts";
import type { EquivalentsPerKilogram, Kelvin, PH } from "./quantities.ts";
import { equivalentsPerKilogram } from "./quantities.ts";

/** Half the width of the central difference. */
const halfWidth = 0.005; // pH

/** Strong base per unit of pH at a pH, eq/kg. */
export function bufferIntensity(totals: Composition, temperature: Kelvin, at: PH, solids: Solids): EquivalentsPerKilogram {
  const sweep = beginSweep(totals, temperature, solids);
  const below = sweepAcid(sweep, totals, ph(at - halfWidth));
  const above = sweepAcid(sweep, totals, ph(at + halfWidth));
  return equivalentsPerKilogram((below - above) / (2 * halfWidth));
}
