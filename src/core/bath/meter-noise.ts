import { checkWithin } from "../limits/domain.ts";
import { meterAccuracy } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import { readingsCompared } from "./common-practice.ts";

/**
 * By how much two readings of one bath can differ although nothing happened to it.
 *
 * @throws OutOfRange for an accuracy outside its domain
 */
export function meterNoise(accuracy: number): number {
  checkWithin("meter accuracy", accuracy, meterAccuracy);
  return readingsCompared * accuracy;
}

/** Whether the pH rose or fell by more than that; a change of less tells nothing. */
export function isBeyond(noise: number, change: number): boolean {
  return Math.abs(change) > noise + roundingError;
}
