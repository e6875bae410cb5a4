import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { aimedPh, liquidVolume, readablePh } from "../limits/domains.ts";
import type { CubicMeters } from "../units/quantity.ts";
import { cubicMeters, ph } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import { isBeyond, meterNoise } from "./meter-noise.ts";
import type { Answered } from "./model/estimate-further.ts";
import { estimateFurther } from "./model/estimate-further.ts";
import { recovery } from "./recovery.ts";
import { firstAddition } from "./top-up.ts";

/** What a shop goes by when it adds again. */
export interface AddingAgain {
  readonly tolerance: number;
  readonly accuracy: number;
  /** Absent: no more is added than last time. */
  readonly openingDose: CubicMeters | undefined;
  readonly houseShare: number;
}

/**
 * Concentrate to add next, judged from what the last addition did: never more than a first addition, or than was added
 * last where the opening dose is not known; 0 once within the tolerance of the baseline or above it.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where the bath rose by no more than its meter may be off
 */
export function nextAddition(
  added: CubicMeters,
  { before, after }: Answered,
  bath: Bath,
  { tolerance, accuracy, openingDose, houseShare }: AddingAgain,
): CubicMeters {
  checkWithin("added", added, liquidVolume);
  checkWithin("before", before, readablePh);
  checkWithin("after", after, readablePh);
  checkWithin("baseline", bath.baseline, aimedPh);
  if (openingDose !== undefined) checkWithin("opening dose", openingDose, liquidVolume);
  const question = questionOf(bath);
  const noise = meterNoise(accuracy);
  const most = openingDose === undefined ? added : firstAddition(openingDose, openingDose, houseShare);
  if (recovery(after, bath.baseline, tolerance) !== "short") return cubicMeters(0);
  const rise = after - before;
  if (rise < 0 || !isBeyond(noise, rise)) {
    throw new DomainError(
      "no-answer",
      `The bath hardly answered: the addition moved it by ${rise.toFixed(2)} pH, and two readings of one bath can differ by ${noise.toFixed(2)}. Mix and read again; check meter, temperature, mixing and water before adding more.`,
    );
  }
  return cubicMeters(Math.min(most, added * estimateFurther(question, { before, after: ph(after) }).best));
}
