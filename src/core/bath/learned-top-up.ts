import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { aimedPh, plainAmount, readablePh } from "../limits/domains.ts";
import { median } from "../numeric/median.ts";
import type { PH } from "../units/quantity.ts";
import { farthestEstimate } from "./common-practice.ts";
import { isBeyond, meterNoise } from "./meter-noise.ts";
import { checkOpeningDoses } from "./top-up.ts";

/** An addition of a log, in any unit, with the readings before and after it at one temperature. */
export interface LoggedAddition {
  readonly added: number;
  readonly before: PH;
  readonly after: PH;
}

/** What a log knows beside its additions. */
export interface LearnedFrom {
  readonly accuracy: number;
  /** In the unit of the additions; absent where it is not known. */
  readonly openingDose: number | undefined;
}

/** Hydroxide up to a factor that is the same at one temperature. */
const hydroxide = (reading: PH): number => 10 ** reading;

function check({ added, before, after }: LoggedAddition): void {
  checkWithin("one of the additions", added, plainAmount);
  checkWithin("before", before, readablePh);
  checkWithin("after", after, readablePh);
}

const response = ({ added, before, after }: LoggedAddition): number => (hydroxide(after) - hydroxide(before)) / added;

/** The median hydroxide that an addition brought, of those that moved the pH by more than the meter may be off. */
function usualResponse(additions: readonly LoggedAddition[], accuracy: number): number {
  const noise = meterNoise(accuracy);
  const telling = additions.filter(({ before, after }) => isBeyond(noise, after - before));
  const usual = telling.length === 0 ? 0 : median(telling.map(response));
  if (usual > 0) return usual;
  throw new DomainError(
    "no-answer",
    `The additions so far did not raise the pH, or by no more than two readings of one bath can differ, ${noise.toFixed(2)}. Mix and read again; check meter, temperature, mixing and water before adding more.`,
  );
}

function checkReach(amount: number, additions: readonly LoggedAddition[]): void {
  const largest = additions.reduce((most, { added }) => Math.max(most, added), 0);
  if (amount <= farthestEstimate * largest) return;
  throw new DomainError(
    "no-answer",
    `This comes to more than ${farthestEstimate} times the largest addition so far, and so far from what was measured nothing can be said. Add as much as last time, mix and read again.`,
  );
}

/**
 * Top-up in the unit of the additions: hydroxide missing over the median hydroxide that an addition brought;
 * 0 at or above the baseline.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" without an addition, where none raised the pH by more than the meter may be off, or
 *   where the top-up comes to more than the opening dose or than the additions can tell
 */
export function learnedTopUp(
  baseline: PH,
  reading: PH,
  additions: readonly LoggedAddition[],
  { accuracy, openingDose }: LearnedFrom,
): number {
  checkWithin("baseline", baseline, aimedPh);
  checkWithin("reading", reading, readablePh);
  if (openingDose !== undefined) checkWithin("opening dose", openingDose, plainAmount);
  if (additions.length === 0) {
    throw new DomainError("no-answer", "No addition has been logged with both its readings yet");
  }
  additions.forEach(check);
  const usual = usualResponse(additions, accuracy);
  if (reading >= baseline) return 0;
  const amount = (hydroxide(baseline) - hydroxide(reading)) / usual;
  if (openingDose === undefined) checkReach(amount, additions);
  else checkOpeningDoses(amount / openingDose);
  return amount;
}
