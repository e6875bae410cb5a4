import { addLigand } from "./add-ligand.ts";
import { addSaturatedCarbonate } from "./add-saturated-carbonate.ts";
import { addTo } from "./checked-array.ts";
import type { Cation, ChemicalSystem, Species } from "./chemical-system.ts";

/**
 * The equilibrium is the minimum of a convex function of the logarithms of the free activities
 * (hydrogen ion and metals): every species is an exponential, every ligand the logarithm of a sum of
 * exponentials. Its gradient is the balance of hydrogen ions and of each metal, so a Newton step with a
 * check on the function reaches the one solution from any start. Gives back the function's value.
 */
export function evaluateBalances(system: ChemicalSystem): number {
  clear(system);
  tieSaturated(system);
  let height = addWater(system);
  for (const cation of system.cations) height += addCation(system, cation);
  for (const ligand of system.ligands) {
    const saturated = system.calcite.present && ligand === system.carbonate;
    height += saturated ? addSaturatedCarbonate(system, ligand) : addLigand(system, ligand);
  }
  return height;
}

function clear(system: ChemicalSystem): void {
  const { rows, gradient, curvature, drift, strengthSlopes, chloride } = system;
  for (let row = 0; row < rows; row += 1) {
    gradient[row] = 0;
    drift[row] = 0;
    strengthSlopes[row] = 0;
    for (let column = row; column < rows; column += 1) curvature[row * rows + column] = 0;
  }
  system.strengthDrift = 0;
  system.measuredStrength = chloride / 2;
  system.solutes = chloride;
}

/** At saturation the activity of magnesium follows that of H+, that of carbonate follows calcium's. */
function tieSaturated(system: ChemicalSystem): void {
  const { brucite, calcite, magnesium, calcium, carbonate } = system;
  if (brucite.present && magnesium !== undefined) {
    magnesium.logActivity = brucite.logSolubility + 2 * (system.logHydrogen - system.logWaterActivity);
  }
  if (calcite.present && calcium !== undefined && carbonate !== undefined) {
    carbonate.logActivity = calcite.logSolubility - calcium.logActivity;
  }
}

/** Adds a species that no ligand limits; row 0 stands for "no metal". Gives back its amount. */
function addFree(system: ChemicalSystem, species: Species, hydrogen: number, row: number, logCation: number): number {
  const amount = Math.exp(species.logShift + hydrogen * system.logHydrogen + logCation);
  const held = hydrogen * amount;
  const charge = species.halfChargeSquared * amount;
  addTo(system.gradient, 0, held);
  addTo(system.curvature, 0, hydrogen * held);
  addTo(system.drift, 0, species.shiftSlope * held);
  addTo(system.strengthSlopes, 0, hydrogen * charge);
  system.measuredStrength += charge;
  system.strengthDrift += species.shiftSlope * charge;
  system.solutes += amount;
  if (row > 0) {
    addTo(system.gradient, row, amount);
    addTo(system.curvature, row, held);
    addTo(system.curvature, row * system.rows + row, amount);
    addTo(system.drift, row, species.shiftSlope * amount);
    addTo(system.strengthSlopes, row, charge);
  }
  return amount;
}

function addWater(system: ChemicalSystem): number {
  const { hydrogenTotal, logHydrogen } = system;
  addTo(system.gradient, 0, -hydrogenTotal);
  const hydrogenIon = addFree(system, system.hydrogenIon, 1, 0, 0);
  const hydroxide = addFree(system, system.hydroxide, -1, 0, 0);
  return hydrogenIon + hydroxide - hydrogenTotal * logHydrogen;
}

function addCation(system: ChemicalSystem, cation: Cation): number {
  addTo(system.gradient, cation.row, -cation.total);
  let height = -cation.total * cation.logActivity;
  for (const species of cation.species)
    height += addFree(system, species, species.hydrogen, cation.row, cation.logActivity);
  return height;
}
