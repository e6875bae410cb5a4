import { addTo } from "./checked-array.ts";
import type { ChemicalSystem, Ligand } from "./chemical-system.ts";
import { clearSquares, weighGroup } from "./weigh-group.ts";

/**
 * Adds a ligand, shared among its species in proportion to their weights: means give the balances,
 * covariances their slopes. Gives back its part of the convex function.
 */
export function addLigand(system: ChemicalSystem, ligand: Ligand): number {
  const { gradient, curvature, drift, strengthSlopes, rows } = system;
  const squares = ligand.squares;
  clearSquares(squares);
  let sum = 0;
  let hydrogenSum = 0;
  let chargeSum = 0;
  let slopeSum = 0;
  for (const group of ligand.groups) {
    weighGroup(group, system.logHydrogen, 0, squares);
    sum += group.sum;
    hydrogenSum += group.hydrogenSum;
    chargeSum += group.chargeSum;
    slopeSum += group.slopeSum;
  }
  const scale = ligand.total / sum;
  const meanHydrogen = hydrogenSum / sum;
  const meanCharge = chargeSum / sum;
  const meanSlope = slopeSum / sum;
  addTo(gradient, 0, scale * hydrogenSum);
  addTo(curvature, 0, scale * (squares.hydrogenSquares - meanHydrogen * hydrogenSum));
  addTo(drift, 0, scale * (squares.hydrogenSlope - meanHydrogen * slopeSum));
  addTo(strengthSlopes, 0, scale * (squares.hydrogenCharge - meanHydrogen * chargeSum));
  system.measuredStrength += scale * chargeSum;
  system.strengthDrift += scale * (squares.chargeSlope - meanCharge * slopeSum);
  system.solutes += ligand.total;
  for (const group of ligand.groups) {
    if (group.cation === undefined) continue;
    const row = group.cation.row;
    const bound = scale * group.sum;
    const share = group.sum / sum;
    addTo(gradient, row, bound);
    addTo(curvature, row, scale * (group.hydrogenSum - meanHydrogen * group.sum));
    addTo(curvature, row * rows + row, bound);
    addTo(drift, row, scale * (group.slopeSum - meanSlope * group.sum));
    addTo(strengthSlopes, row, scale * (group.chargeSum - meanCharge * group.sum));
    for (const other of ligand.groups) {
      if (other.cation === undefined || other.cation.row < row) continue;
      addTo(curvature, row * rows + other.cation.row, -scale * share * other.sum);
    }
  }
  const logSum = Math.log(sum);
  ligand.logActivity = -logSum;
  return ligand.total * logSum;
}
