import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { liquidVolume, readablePh } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { CubicMeters } from "../units/quantity.ts";
import { cubicMeters, ph } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import { leastRise } from "./common-practice.ts";
import type { Answered } from "./model/estimate-further.ts";
import { estimateFurther } from "./model/estimate-further.ts";
import { recovery } from "./recovery.ts";

/**
 * Concentrate still to be added, judged from what the last addition did; 0 once within the tolerance of the baseline
 * or above it.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where the bath hardly answered
 */
export function nextAddition(
  added: CubicMeters,
  { before, after }: Answered,
  bath: Bath,
  tolerance: number,
): CubicMeters {
  checkWithin("added", added, liquidVolume);
  checkWithin("before", before, readablePh);
  checkWithin("after", after, readablePh);
  const question = questionOf(bath);
  if (recovery(after, bath.baseline, tolerance) !== "short") return cubicMeters(0);
  if (after - before < leastRise - roundingError) {
    const rise = (after - before).toFixed(2);
    throw new DomainError(
      "no-answer",
      `The bath hardly answered: the addition moved it by ${rise} pH. Check meter, temperature, mixing and water before adding more.`,
    );
  }
  return cubicMeters(added * estimateFurther(question, { before, after: ph(after) }).best);
}
