import { at } from "./checked-array.ts";
import type { ChemicalSystem } from "./chemical-system.ts";

/** Square root of the curvature (Cholesky), lower triangle, row by row into the work array. */
function factorize(system: ChemicalSystem): void {
  const { rows, curvature, work } = system;
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = at(curvature, column * rows + row);
      for (let k = 0; k < column; k += 1) rest -= at(work, row * rows + k) * at(work, column * rows + k);
      work[row * rows + column] = row === column ? Math.sqrt(rest) : rest / at(work, column * rows + column);
    }
  }
}

/** Solves curvature · answer = −balance with the factor in the work array. */
function substitute(system: ChemicalSystem, balance: Float64Array, answer: Float64Array): void {
  const { rows, work } = system;
  for (let row = 0; row < rows; row += 1) {
    let rest = -at(balance, row);
    for (let k = 0; k < row; k += 1) rest -= at(work, row * rows + k) * at(answer, k);
    answer[row] = rest / at(work, row * rows + row);
  }
  for (let row = rows - 1; row >= 0; row -= 1) {
    let rest = at(answer, row);
    for (let k = row + 1; k < rows; k += 1) rest -= at(work, k * rows + row) * at(answer, k);
    answer[row] = rest / at(work, row * rows + row);
  }
}

/** Largest part of a step. */
export function sizeOf(step: Float64Array): number {
  let size = 0;
  for (const part of step) size = Math.max(size, Math.abs(part));
  return size;
}

/**
 * Writes the Newton step at constant ionic strength and gives back the size of its largest part; NaN
 * where the curvature has lost its sign to rounding.
 */
export function newtonStep(system: ChemicalSystem): number {
  factorize(system);
  substitute(system, system.gradient, system.step);
  return sizeOf(system.step);
}

/** How the Newton step changes per unit of a sought amount; to be called after `newtonStep`. */
export function newtonStepPerAmount(system: ChemicalSystem): void {
  substitute(system, system.amountDrift, system.stepPerAmount);
}

/** How the Newton step changes per unit of ionic strength; to be called after `newtonStep`. */
export function newtonStepDrift(system: ChemicalSystem): void {
  substitute(system, system.drift, system.stepDrift);
}
