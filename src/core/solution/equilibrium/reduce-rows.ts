import type { ChemicalSystem } from "./chemical-system.ts";
import { addTo, at } from "./checked-array.ts";

/** Makes a row of the curvature the identity, so that its unknown takes no step of its own. */
function dropRow(system: ChemicalSystem, row: number): void {
  const { rows, curvature, gradient } = system;
  for (let other = 0; other < rows; other += 1) {
    curvature[Math.min(row, other) * rows + Math.max(row, other)] = other === row ? 1 : 0;
  }
  gradient[row] = 0;
}

/** Over brucite the magnesium follows the hydrogen ion squared: its balance is folded into hydrogen's. */
function foldMagnesium(system: ChemicalSystem, row: number): void {
  const { rows, curvature, gradient } = system;
  system.brucite.amount = -at(gradient, row);
  addTo(gradient, 0, 2 * at(gradient, row));
  addTo(curvature, 0, 4 * at(curvature, row) + 4 * at(curvature, row * rows + row));
  for (let other = 1; other < rows; other += 1) {
    if (other !== row) addTo(curvature, other, 2 * at(curvature, Math.min(row, other) * rows + Math.max(row, other)));
  }
  dropRow(system, row);
}

/** Leaves only the unknowns that are free: not a given pH, not a metal held by a solid. */
export function reduceRows(system: ChemicalSystem): void {
  if (system.brucite.present && system.magnesium !== undefined) foldMagnesium(system, system.magnesium.row);
  system.acidToClose = system.hydrogenIsGiven ? at(system.gradient, 0) : 0;
  if (system.hydrogenIsGiven) dropRow(system, 0);
}
