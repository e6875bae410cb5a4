import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { readablePh, recordedTime } from "../limits/domains.ts";
import { median } from "../numeric/median.ts";
import { theilSenSlope } from "../numeric/theil-sen.ts";
import type { PH } from "../units/quantity.ts";

/** A reading and its time, in any unit, the same for all. */
export interface TimedReading {
  readonly time: number;
  readonly reading: PH;
}

/** Half a million pairs: a fraction of a second. */
const mostReadings = 1000;
/** Fewer give a trend that one reading turns around; common practice, no source. */
const fewestToForesee = 4;
/** A slope of less is what rounding leaves of none. */
const noSlope = 1e-9;

/**
 * Change of pH per unit of time, Theil–Sen.
 *
 * @throws OutOfRange for a time or reading outside its domain
 * @throws DomainError "invalid" for more readings than the pairs can be counted of, "no-answer" without two times
 */
export function phTrend(readings: readonly TimedReading[]): number {
  if (readings.length > mostReadings) {
    throw new DomainError(
      "invalid",
      `Times and readings give ${readings.length} pairs, allowed: at most ${mostReadings}. Take those since the last addition`,
    );
  }
  for (const { time, reading } of readings) {
    checkWithin("time", time, recordedTime);
    checkWithin("reading", reading, readablePh);
  }
  const slope = theilSenSlope(readings.map(({ time, reading }) => ({ x: time, y: reading })));
  if (slope === undefined) throw new DomainError("no-answer", "A trend takes readings at two different times at least");
  return slope;
}

/** The latest reading; the middle one of several at the latest time. */
function lastOf(readings: readonly TimedReading[]): number {
  const latest = readings.reduce((last, { time }) => Math.max(last, time), -Infinity);
  return median(readings.filter(({ time }) => time === latest).map(({ reading }) => reading));
}

/**
 * Time from the last reading until the trigger if the trend goes on: (last reading − trigger) / |slope|; 0 at or below
 * the trigger.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" with fewer than four readings, or where the pH does not fall
 */
export function timeUntilTrigger(readings: readonly TimedReading[], trigger: PH): number {
  checkWithin("trigger", trigger, readablePh);
  const slope = phTrend(readings);
  if (readings.length < fewestToForesee) {
    throw new DomainError(
      "no-answer",
      `There are ${readings.length} readings; foreseeing takes at least ${fewestToForesee} since the last addition`,
    );
  }
  if (slope > -noSlope)
    throw new DomainError("no-answer", "The pH is not falling, so nothing says when the trigger will be reached");
  return Math.max(0, lastOf(readings) - trigger) / -slope;
}
