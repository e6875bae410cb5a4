/** The middle of some values, or the mean of the two in the middle; there must be one. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((first, second) => first - second);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? Number.NaN;
  return (lower + upper) / 2;
}
