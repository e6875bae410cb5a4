import { DomainError } from "../domain-error.ts";

const mostIterations = 100;

export interface Bracket {
  readonly low: number;
  /** The function there, not positive. */
  readonly atLow: number;
  readonly high: number;
  /** The function there, positive. */
  readonly atHigh: number;
}

/**
 * Where a rising function crosses zero, to `tolerance` in its argument: false position with the weights of
 * Anderson & Björck (BIT 13 (1973) 253), which is quick on functions that are nearly straight.
 */
export function rootOfRising(rising: (argument: number) => number, bracket: Bracket, tolerance: number): number {
  let { low, atLow, high, atHigh } = bracket;
  let lastSide = 0;
  let last = Number.NaN;
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    const middle = (low * atHigh - high * atLow) / (atHigh - atLow);
    const value = rising(middle);
    if (value === 0 || Math.abs(middle - last) <= tolerance || high - low <= tolerance) return middle;
    last = middle;
    const side = Math.sign(value);
    const weight = 1 - value / (side < 0 ? atLow : atHigh);
    const relaxed = side === lastSide ? (weight > 0 ? weight : 0.5) : 1;
    lastSide = side;
    if (side < 0) {
      low = middle;
      atLow = value;
      atHigh *= relaxed;
    } else {
      high = middle;
      atHigh = value;
      atLow *= relaxed;
    }
  }
  throw new DomainError("no-answer", "The search for the amount that gives this pH did not settle");
}
