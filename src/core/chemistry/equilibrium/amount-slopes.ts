import { addTo } from "./checked-array.ts";
import type { ChemicalSystem } from "./chemical-system.ts";

/**
 * Slopes of the balances against an amount that changes all totals along a line, after the balances have
 * been evaluated. Gives back the slope of the measured ionic strength.
 */
export function addAmountSlopes(system: ChemicalSystem, chlorideSlope: number): number {
  const { amountDrift } = system;
  amountDrift.fill(0);
  let strength = chlorideSlope / 2;
  let charge = -chlorideSlope;
  for (const cation of system.cations) {
    amountDrift[cation.row] = -cation.totalSlope;
    charge += cation.valence * cation.totalSlope;
  }
  for (const ligand of system.ligands) {
    if (ligand.totalSlope === 0) continue;
    charge += ligand.basisCharge * ligand.totalSlope;
    let sum = 0;
    for (const group of ligand.groups) sum += group.sum;
    const scale = ligand.totalSlope / sum;
    for (const group of ligand.groups) {
      strength += scale * group.chargeSum;
      addTo(amountDrift, 0, scale * group.hydrogenSum);
      if (group.cation !== undefined) addTo(amountDrift, group.cation.row, scale * group.sum);
    }
  }
  addTo(amountDrift, 0, charge);
  return strength;
}
