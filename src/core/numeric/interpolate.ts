/** Known values of a smooth function, in rising order of x. */
export type Points = readonly (readonly [x: number, y: number])[];

/** The points between which x lies, with one more on either side where there is one. */
function around(points: Points, x: number): Points {
  const next = points.findIndex(([at]) => at >= x);
  const start = Math.max(0, Math.min(points.length - 4, next - 2));
  return points.slice(start, start + 4);
}

/** Value of the cubic through the four points nearest to x, which lies between the first and the last. */
export function interpolate(points: Points, x: number): number {
  const nearest = around(points, x);
  return nearest.reduce((sum, [at, value]) => {
    const weight = nearest.reduce(
      (product, [other]) => (other === at ? product : (product * (x - other)) / (at - other)),
      1,
    );
    return sum + weight * value;
  }, 0);
}
