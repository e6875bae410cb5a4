import type { ChemicalSystem } from "./chemical-system.ts";

/** Lowering of water's activity per mol/kg of solutes (Garrels & Christ 1965; Raoult's law gives 0.018). */
const waterLowering = 0.017;

/** The lowering is a law of dilute solutions: no further than this. */
const leastWaterActivity = 0.5;

/** Activity coefficients and their slopes at the system's ionic strength and solutes. */
export function updateActivity(system: ChemicalSystem): void {
  const ionicStrength = system.ionicStrength;
  const root = Math.sqrt(ionicStrength);
  const halfPerRoot = 0.5 / root;
  const logWaterActivity = Math.log(Math.max(leastWaterActivity, 1 - waterLowering * system.solutes));
  system.logWaterActivity = logWaterActivity;
  for (const species of system.species) {
    const crowded = 1 / (1 + species.sizeFactor * root);
    const logCoefficient = species.linear * ionicStrength - species.slope * root * crowded;
    species.logShift = species.logFormation - logCoefficient + species.water * logWaterActivity;
    species.shiftSlope = species.slope * halfPerRoot * crowded * crowded - species.linear;
  }
}
