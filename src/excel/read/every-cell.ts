/**
 * One value for every cell of a range, as `values`, `formulas` and `numberFormat` take it: the request
 * stays small however long the range is. Office.js documents it ("update all cells in the range");
 * its types know the two-dimensional form only.
 */
export function everyCell(value: string | number): unknown[][] {
  return value as unknown as unknown[][];
}
