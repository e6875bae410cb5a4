import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { asFoundError, readablePh, recordedTime } from "../limits/domains.ts";
import type { PH } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";

/** A check of a meter that was adjusted right after it. */
export interface MeterCheck {
  /** In any unit, the same for all. */
  readonly time: number;
  /** What the meter read too much before it was adjusted, at about the pH of the reading. */
  readonly asFoundError: number;
}

/** The error that the first check after a reading found; checks of one minute must agree. */
function nextCheck(checks: readonly MeterCheck[], when: number): MeterCheck | undefined {
  const later = checks.filter(({ time }) => time > when);
  const time = later.reduce((first, check) => Math.min(first, check.time), Infinity);
  const [next, ...twins] = later.filter((check) => check.time === time);
  if (twins.some((twin) => twin.asFoundError !== next?.asFoundError)) {
    throw new DomainError(
      "invalid",
      "Check times holds one time twice with different errors; keep one row for each check",
    );
  }
  return next;
}

/**
 * A reading less the drift of its meter, which is taken as none right after each check and as growing evenly to the
 * error that the next check found. The reading as it is where no check stands before it or none after it.
 *
 * @param when time of the reading; a reading at the time of a check counts as made after it
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError where two checks of one time disagree
 */
export function driftCorrected(reading: PH, when: number, checks: readonly MeterCheck[]): PH {
  checkWithin("reading", reading, readablePh);
  checkWithin("when", when, recordedTime);
  for (const check of checks) {
    checkWithin("check time", check.time, recordedTime);
    checkWithin("as found error", check.asFoundError, asFoundError);
  }
  const adjusted = checks.reduce((last, { time }) => (time <= when ? Math.max(last, time) : last), -Infinity);
  const next = nextCheck(checks, when);
  if (next === undefined || adjusted === -Infinity) return reading;
  const corrected = ph(reading - (next.asFoundError * (when - adjusted)) / (next.time - adjusted));
  checkWithin("corrected reading", corrected, readablePh);
  return corrected;
}
