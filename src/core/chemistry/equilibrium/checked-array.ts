/** An element; NaN outside the array, which the solver's final check refuses. */
export function at(array: Float64Array, index: number): number {
  return array[index] ?? Number.NaN;
}

/** Adds to an element in place. */
export function addTo(array: Float64Array, index: number, value: number): void {
  array[index] = at(array, index) + value;
}
