import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { aimedPh, liquidVolume, readablePh } from "../limits/domains.ts";
import type { CubicMeters, PH } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import { farthestEstimate } from "./common-practice.ts";
import type { Estimate } from "./model/estimate.ts";
import { estimateDoseAtPH, estimatePHAtDose, mostTimesOf } from "./model/estimate-dose.ts";

/**
 * pH if the bath whose known dose gave its baseline held another dose.
 *
 * @throws OutOfRange for a value outside its domain, and for a dose too far from the known one
 * @throws DomainError "no-answer" where no bath of this builder gives the known pH
 */
export function phAtDose(bath: Bath, knownDose: CubicMeters, newDose: CubicMeters): Estimate {
  checkWithin("known dose", knownDose, liquidVolume);
  checkWithin("known ph", bath.baseline, readablePh);
  checkWithin("new dose", newDose, liquidVolume);
  const question = questionOf(bath);
  checkWithin("new dose", newDose, {
    ...liquidVolume,
    high: Math.min(liquidVolume.high, knownDose * Math.min(farthestEstimate, mostTimesOf(question))),
    tooHigh: "So far from the dose that gave the known pH nothing can be said.",
  });
  return estimatePHAtDose(question, newDose / knownDose);
}

/** Of what was measured; with less the water alone makes the pH. */
const leastEstimate = 0.01;

/**
 * Best estimate of the dose that gives a pH; the inverse of `phAtDose`.
 *
 * @throws OutOfRange for a value outside its domain, such as a pH at hazardous waste
 * @throws DomainError "no-answer" where no dose gives that pH, or one too far from what was measured
 */
export function doseAtPh(bath: Bath, knownDose: CubicMeters, target: PH): CubicMeters {
  checkWithin("known dose", knownDose, liquidVolume);
  checkWithin("known ph", bath.baseline, readablePh);
  checkWithin("target ph", target, aimedPh);
  const times = estimateDoseAtPH(questionOf(bath), target).best;
  if (times > farthestEstimate) {
    throw new DomainError(
      "no-answer",
      `pH ${target.toFixed(2)} calls for ${times.toFixed(0)} times the known dose. More than ${farthestEstimate} times what was measured is no estimate: check the pH and the dose.`,
    );
  }
  if (times < leastEstimate) {
    throw new DomainError(
      "no-answer",
      `pH ${target.toFixed(2)} calls for less than a hundredth of the known dose, and so thin a bath is little more than its water: check the pH and the dose.`,
    );
  }
  return cubicMeters(knownDose * times);
}
