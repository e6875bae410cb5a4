import type { ChemicalSystem } from "./chemical-system.ts";
import { at } from "./checked-array.ts";

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

/**
 * Writes the Newton step of all unknowns and gives back the size of its largest part; NaN where the
 * curvature has lost its sign to rounding.
 */
export function newtonStep(system: ChemicalSystem): number {
  const { rows, gradient, work, step } = system;
  factorize(system);
  for (let row = 0; row < rows; row += 1) {
    let rest = -at(gradient, row);
    for (let k = 0; k < row; k += 1) rest -= at(work, row * rows + k) * at(step, k);
    step[row] = rest / at(work, row * rows + row);
  }
  let size = 0;
  for (let row = rows - 1; row >= 0; row -= 1) {
    let rest = at(step, row);
    for (let k = row + 1; k < rows; k += 1) rest -= at(work, k * rows + row) * at(step, k);
    const part = rest / at(work, row * rows + row);
    step[row] = part;
    size = Math.max(size, Math.abs(part));
  }
  return size;
}
