import { addTo, at } from "./checked-array.ts";
import type { ChemicalSystem } from "./chemical-system.ts";

const between = (system: ChemicalSystem, row: number, other: number): number =>
  Math.min(row, other) * system.rows + Math.max(row, other);

/** Makes a row of the curvature the identity, so that its unknown takes no step of its own. */
export function dropRow(system: ChemicalSystem, row: number): void {
  const { rows, curvature } = system;
  for (let other = 0; other < rows; other += 1) curvature[between(system, row, other)] = other === row ? 1 : 0;
  system.gradient[row] = 0;
  system.drift[row] = 0;
  system.strengthSlopes[row] = 0;
}

/** Over brucite magnesium follows the hydrogen ion squared: its balance is folded into hydrogen's. */
function foldMagnesium(system: ChemicalSystem, row: number): void {
  const { rows, curvature, gradient, drift, strengthSlopes } = system;
  system.brucite.amount = -at(gradient, row);
  addTo(gradient, 0, 2 * at(gradient, row));
  addTo(drift, 0, 2 * at(drift, row));
  addTo(strengthSlopes, 0, 2 * at(strengthSlopes, row));
  addTo(curvature, 0, 4 * at(curvature, row) + 4 * at(curvature, row * rows + row));
  for (let other = 1; other < rows; other += 1) {
    if (other !== row) addTo(curvature, other, 2 * at(curvature, between(system, row, other)));
  }
  dropRow(system, row);
}

/** With the pH given, strong acid or base takes up what the hydrogen balance leaves, and adds its ions. */
function closeWithAcid(system: ChemicalSystem): void {
  const acid = at(system.gradient, 0);
  const half = acid < 0 ? -0.5 : 0.5;
  system.acidToClose = acid;
  system.measuredStrength += half * acid;
  system.solutes += Math.abs(acid);
  system.strengthDrift += half * at(system.drift, 0);
  for (let row = 1; row < system.rows; row += 1) addTo(system.strengthSlopes, row, half * at(system.curvature, row));
  dropRow(system, 0);
}

/** Leaves only the unknowns that are free: not a given pH, not a metal held by a solid. */
export function reduceRows(system: ChemicalSystem): void {
  if (system.brucite.present && system.magnesium !== undefined) foldMagnesium(system, system.magnesium.row);
  if (system.hydrogenIsGiven) closeWithAcid(system);
  else system.acidToClose = 0;
}
