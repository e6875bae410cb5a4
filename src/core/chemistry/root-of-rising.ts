import { DomainError } from "../limits/domain-error.ts";

const mostIterations = 100;
/** Relative to what the function spans at the start; the last chord then leaves less than 1e-6 of the root. */
const fineness = 1e-5;
/** A bracket as narrow as this, relative to its upper end, holds rounding and nothing more. */
const narrowest = 1e-9;
/** An extrapolation goes a little past its aim, so that it closes a narrow bracket. */
const overshoot = 1.05;
const mostGrowth = 10;

interface Bracket {
  low: number;
  atLow: number;
  high: number;
  atHigh: number;
}

const crossing = ({ low, atLow, high, atHigh }: Bracket): number => low - (atLow * (high - low)) / (atHigh - atLow);

/** Goes up from `first` along the chord until the function is positive; undefined where it is not up to `most`. */
function bracketFrom(
  rising: (argument: number) => number,
  atZero: number,
  first: number,
  most: number,
): Bracket | undefined {
  const bracket: Bracket = { low: 0, atLow: atZero, high: Math.min(first, most), atHigh: 0 };
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    bracket.atHigh = rising(bracket.high);
    if (bracket.atHigh >= 0) return bracket;
    if (bracket.high >= most) return undefined;
    const aim =
      bracket.atHigh > bracket.atLow ? overshoot * (crossing(bracket) - bracket.high) : Number.POSITIVE_INFINITY;
    const next = Math.min(most, mostGrowth * bracket.high, bracket.high + aim);
    bracket.low = bracket.high;
    bracket.atLow = bracket.atHigh;
    bracket.high = Math.max(next, bracket.low * (1 + Number.EPSILON * 4));
  }
  return undefined;
}

/**
 * Where a rising function, negative at zero, crosses zero: along chords to a bracket, then false position
 * with the weights of Anderson & Björck (BIT 13 (1973) 253), quick on functions that are nearly straight.
 * `first` is a guess not above the root, better too low than too high. Undefined where the function is
 * still negative at `most`.
 */
export function rootOfRising(
  rising: (argument: number) => number,
  atZero: number,
  first: number,
  most: number,
): number | undefined {
  const bracket = bracketFrom(rising, atZero, first, most);
  if (bracket === undefined) return undefined;
  const negligible = fineness * Math.max(-atZero, bracket.atHigh);
  if (bracket.atHigh <= negligible) return crossing(bracket);
  let lastSide = 0;
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    const middle = crossing(bracket);
    const value = rising(middle);
    const side = Math.sign(value);
    const weight = 1 - value / (side < 0 ? bracket.atLow : bracket.atHigh);
    const relaxed = side === lastSide ? (weight > 0 ? weight : 0.5) : 1;
    lastSide = side;
    if (side < 0) {
      bracket.low = middle;
      bracket.atLow = value;
      bracket.atHigh *= relaxed;
    } else {
      bracket.high = middle;
      bracket.atHigh = value;
      bracket.atLow *= relaxed;
    }
    if (bracket.high - bracket.low <= narrowest * bracket.high) return middle;
    if (Math.abs(value) <= negligible) return value === 0 ? middle : crossing(bracket);
  }
  throw new DomainError("no-answer", "The search for the amount that gives this pH did not settle");
}
