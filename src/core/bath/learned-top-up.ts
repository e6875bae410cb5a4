import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { plainAmount, readablePh } from "../limits/domains.ts";
import { median } from "../numeric/median.ts";
import type { PH } from "../units/quantity.ts";

/** An addition of a log, in any unit, with the readings before and after it at one temperature. */
export interface LoggedAddition {
  readonly added: number;
  readonly before: PH;
  readonly after: PH;
}

/** Hydroxide up to a factor that is the same at one temperature. */
const hydroxide = (reading: PH): number => 10 ** reading;

function response({ added, before, after }: LoggedAddition): number {
  checkWithin("one of the additions", added, plainAmount);
  checkWithin("before", before, readablePh);
  checkWithin("after", after, readablePh);
  return (hydroxide(after) - hydroxide(before)) / added;
}

/**
 * Top-up in the unit of the additions: hydroxide missing over the median hydroxide that an addition brought;
 * 0 at or above the baseline.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" without an addition, or where the additions did not raise the pH
 */
export function learnedTopUp(baseline: PH, reading: PH, additions: readonly LoggedAddition[]): number {
  checkWithin("baseline", baseline, readablePh);
  checkWithin("reading", reading, readablePh);
  if (additions.length === 0) {
    throw new DomainError("no-answer", "No addition has been logged with both its readings yet");
  }
  const usual = median(additions.map(response));
  if (reading >= baseline) return 0;
  if (!(usual > 0)) {
    throw new DomainError(
      "no-answer",
      "The additions so far did not raise the pH. Check meter, temperature, mixing and water.",
    );
  }
  return (hydroxide(baseline) - hydroxide(reading)) / usual;
}
