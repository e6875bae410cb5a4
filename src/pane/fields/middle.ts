/** Mean of at least one number. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The middle of the sorted numbers, of an even count the mean of the middle two, as Excel's MEDIAN. Throws a RangeError for none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.floor((sorted.length - 1) / 2)];
  if (upper === undefined || lower === undefined) throw new RangeError("A median needs at least one number.");
  return (lower + upper) / 2;
}
