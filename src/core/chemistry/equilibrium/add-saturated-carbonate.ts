import { addTo } from "./checked-array.ts";
import type { ChemicalSystem, Group, Ligand } from "./chemical-system.ts";
import { clearSquares, weighGroup } from "./weigh-group.ts";

/**
 * Adds carbonate over calcite: its basis ion has the activity that calcium's leaves it, so each species
 * is an exponential that holds its metal once and calcium once less. What is not dissolved is calcite.
 */
export function addSaturatedCarbonate(system: ChemicalSystem, ligand: Ligand): number {
  const { calcium } = system;
  if (calcium === undefined) return Number.NaN;
  const squares = ligand.squares;
  clearSquares(squares);
  let sum = 0;
  for (const group of ligand.groups) {
    weighGroup(group, system.logHydrogen, ligand.logActivity, squares);
    sum += group.sum;
    addHydrogen(system, group);
    addMetal(system, group, calcium.row, -1);
    if (group.cation !== undefined) addMetal(system, group, group.cation.row, 1);
    if (group.cation !== undefined) addCross(system, group, group.cation.row, calcium.row);
  }
  addTo(system.curvature, 0, squares.hydrogenSquares);
  addTo(system.drift, 0, squares.hydrogenSlope);
  addTo(system.strengthSlopes, 0, squares.hydrogenCharge);
  system.strengthDrift += squares.chargeSlope;
  system.solutes += sum;
  addTo(system.gradient, calcium.row, ligand.total);
  system.calcite.amount = ligand.total - sum;
  return sum + ligand.total * calcium.logActivity;
}

function addHydrogen(system: ChemicalSystem, group: Group): void {
  addTo(system.gradient, 0, group.hydrogenSum);
  system.measuredStrength += group.chargeSum;
}

/** A metal that every species of the group holds `times` times. */
function addMetal(system: ChemicalSystem, group: Group, row: number, times: number): void {
  addTo(system.gradient, row, times * group.sum);
  addTo(system.curvature, row, times * group.hydrogenSum);
  addTo(system.curvature, row * system.rows + row, group.sum);
  addTo(system.drift, row, times * group.slopeSum);
  addTo(system.strengthSlopes, row, times * group.chargeSum);
}

function addCross(system: ChemicalSystem, group: Group, row: number, calciumRow: number): void {
  const element = Math.min(row, calciumRow) * system.rows + Math.max(row, calciumRow);
  addTo(system.curvature, element, row === calciumRow ? -2 * group.sum : -group.sum);
}
