import type { ChemicalSystem } from "./chemical-system.ts";

/** Lowering of water's activity per mol/kg of solutes (Garrels & Christ 1965; Raoult's law gives 0.018). */
const waterLowering = 0.017;

/** Activity coefficients at the system's ionic strength. */
export function updateActivityCoefficients(system: ChemicalSystem): void {
  const ionicStrength = system.ionicStrength;
  const root = Math.sqrt(ionicStrength);
  for (const species of system.species) {
    const logCoefficient = species.linear * ionicStrength - (species.pull * root) / (1 + species.crowding * root);
    species.logActivityCoefficient = logCoefficient;
    species.logShift = species.logFormation - logCoefficient + species.definition.water * system.logWaterActivity;
  }
}

/** The ionic strength of the present amounts, mol/kg, with the acid or base that closes the balance. */
export function measureIonicStrength(system: ChemicalSystem, closingCharge: number): number {
  let sum = Math.abs(closingCharge);
  for (const species of system.species) sum += species.chargeSquared * species.amount;
  return sum / 2;
}

/** Natural logarithm of the activity of water over the present amounts. */
export function measureWaterActivity(system: ChemicalSystem): number {
  let sum = 0;
  for (const species of system.species) sum += species.amount;
  return Math.log(Math.max(0.5, 1 - waterLowering * sum));
}
