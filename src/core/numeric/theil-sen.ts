import { median } from "./median.ts";

/** A value measured at a time, place or the like. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Closer than this, two x are one: a date in days carries noise of a hundred-billionth. */
const sameX = 1e-9;

/**
 * Theil–Sen slope: the median of the slopes of all pairs of points with different x (Helsel et al., Statistical
 * Methods in Water Resources, USGS TM4-A3, chapter 10), which a few wild points do not sway. `undefined` where no two
 * points differ in x. Time and memory grow with the square of the number of points.
 */
export function theilSenSlope(points: readonly Point[]): number | undefined {
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let found = 0;
  for (const [index, one] of points.entries()) {
    for (let next = index + 1; next < points.length; next += 1) {
      const other = points[next] ?? one;
      const run = other.x - one.x;
      if (Math.abs(run) >= sameX) slopes[found++] = (other.y - one.y) / run;
    }
  }
  return found === 0 ? undefined : median(slopes.subarray(0, found));
}
