import type { Cation, ChemicalSystem, Group, Ligand } from "./chemical-system.ts";
import { addTo, at } from "./checked-array.ts";

/**
 * The equilibrium is the minimum of a convex function of the logarithms of the free activities
 * (hydrogen ion and metals): every species is an exponential, every ligand the logarithm of a sum of
 * exponentials. Its gradient is the balance of hydrogen ions and of each metal, so a Newton step with a
 * check on the function reaches the one solution from any start.
 */
export function evaluateBalances(system: ChemicalSystem): number {
  system.gradient.fill(0);
  system.curvature.fill(0);
  tieSaturated(system);
  let height = addWater(system);
  for (const cation of system.cations) height += addCation(system, cation);
  for (const ligand of system.ligands) {
    const saturated = system.calcite.present && ligand === system.carbonate;
    height += saturated ? addSaturatedCarbonate(system, ligand) : addLigand(system, ligand);
  }
  return height;
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

function addWater(system: ChemicalSystem): number {
  const { hydrogenIon, hydroxide, logHydrogen } = system;
  hydrogenIon.amount = Math.exp(hydrogenIon.logShift + logHydrogen);
  hydroxide.amount = Math.exp(hydroxide.logShift - logHydrogen);
  addTo(system.gradient, 0, hydrogenIon.amount - hydroxide.amount - system.hydrogenTotal);
  addTo(system.curvature, 0, hydrogenIon.amount + hydroxide.amount);
  return hydrogenIon.amount + hydroxide.amount - system.hydrogenTotal * logHydrogen;
}

function addCation(system: ChemicalSystem, cation: Cation): number {
  const { gradient, curvature, rows } = system;
  let sum = 0;
  for (const species of cation.species) {
    const amount = Math.exp(species.logShift + species.hydrogen * system.logHydrogen + cation.logActivity);
    const hydrogen = species.hydrogen * amount;
    species.amount = amount;
    sum += amount;
    addTo(gradient, 0, hydrogen);
    addTo(curvature, 0, species.hydrogen * hydrogen);
    addTo(curvature, cation.row, hydrogen);
  }
  addTo(gradient, cation.row, sum - cation.total);
  addTo(curvature, cation.row * rows + cation.row, sum);
  return sum - cation.total * cation.logActivity;
}

/** Relative amounts of one group, and the group's sums; gives back the sum of hydrogen squared. */
function weigh(system: ChemicalSystem, group: Group, offset: number): number {
  const base = offset + (group.cation === undefined ? 0 : group.cation.logActivity);
  let sum = 0;
  let hydrogenSum = 0;
  let hydrogenSquares = 0;
  for (const species of group.species) {
    const weight = Math.exp(species.logShift + species.hydrogen * system.logHydrogen + base);
    const hydrogen = species.hydrogen * weight;
    species.amount = weight;
    sum += weight;
    hydrogenSum += hydrogen;
    hydrogenSquares += species.hydrogen * hydrogen;
  }
  group.sum = sum;
  group.hydrogenSum = hydrogenSum;
  return hydrogenSquares;
}

function addLigand(system: ChemicalSystem, ligand: Ligand): number {
  const { gradient, curvature, rows } = system;
  let sum = 0;
  let hydrogenSum = 0;
  let hydrogenSquares = 0;
  for (const group of ligand.groups) {
    hydrogenSquares += weigh(system, group, 0);
    sum += group.sum;
    hydrogenSum += group.hydrogenSum;
  }
  const scale = ligand.total / sum;
  const spread = scale / sum;
  const logSum = Math.log(sum);
  ligand.logActivity = Math.log(ligand.total) - logSum;
  addTo(gradient, 0, scale * hydrogenSum);
  addTo(curvature, 0, scale * hydrogenSquares - spread * hydrogenSum * hydrogenSum);
  for (const group of ligand.groups) {
    for (const species of group.species) species.amount *= scale;
    if (group.cation === undefined) continue;
    const row = group.cation.row;
    addTo(gradient, row, scale * group.sum);
    addTo(curvature, row, scale * group.hydrogenSum - spread * hydrogenSum * group.sum);
    addTo(curvature, row * rows + row, scale * group.sum);
    for (const other of ligand.groups) {
      if (other.cation === undefined || other.cation.row < row) continue;
      addTo(curvature, row * rows + other.cation.row, -spread * group.sum * other.sum);
    }
  }
  return ligand.total * logSum;
}

/** Carbonate over calcite: its basis ion has the activity that calcium's leaves it. */
function addSaturatedCarbonate(system: ChemicalSystem, ligand: Ligand): number {
  const { gradient, curvature, rows, calcium } = system;
  if (calcium === undefined) return Number.NaN;
  let sum = 0;
  for (const group of ligand.groups) {
    const hydrogenSquares = weigh(system, group, ligand.logActivity);
    sum += group.sum;
    addTo(gradient, 0, group.hydrogenSum);
    addTo(curvature, 0, hydrogenSquares);
    // Each species holds its metal once and calcium once less.
    addTo(gradient, calcium.row, -group.sum);
    addTo(curvature, calcium.row, -group.hydrogenSum);
    addTo(curvature, calcium.row * rows + calcium.row, group.sum);
    if (group.cation === undefined) continue;
    const row = group.cation.row;
    addTo(gradient, row, group.sum);
    addTo(curvature, row, group.hydrogenSum);
    addTo(curvature, row * rows + row, group.sum);
    const both = Math.min(row, calcium.row) * rows + Math.max(row, calcium.row);
    addTo(curvature, both, row === calcium.row ? -2 * group.sum : -group.sum);
  }
  addTo(gradient, calcium.row, ligand.total);
  system.calcite.amount = ligand.total - sum;
  return sum + ligand.total * calcium.logActivity;
}
