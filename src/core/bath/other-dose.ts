import { checkWithin } from "../limits/domain.ts";
import { liquidVolume, readablePh } from "../limits/domains.ts";
import type { CubicMeters, PH } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import type { Estimate } from "./model/estimate.ts";
import { estimateDoseAtPH, estimatePHAtDose, mostTimesOf } from "./model/estimate-dose.ts";

/**
 * pH if the bath whose known dose gave its baseline held another dose.
 *
 * @throws OutOfRange for a value outside its domain, and for a dose beyond what the chemistry reaches
 * @throws DomainError "no-answer" where no bath of this builder gives the known pH
 */
export function phAtDose(bath: Bath, knownDose: CubicMeters, newDose: CubicMeters): Estimate {
  checkWithin("known dose", knownDose, liquidVolume);
  checkWithin("known ph", bath.baseline, readablePh);
  checkWithin("new dose", newDose, liquidVolume);
  const question = questionOf(bath);
  checkWithin("new dose", newDose, {
    ...liquidVolume,
    high: Math.min(liquidVolume.high, knownDose * mostTimesOf(question)),
    why: "as far as the chemistry of this bath reaches",
  });
  return estimatePHAtDose(question, newDose / knownDose);
}

/**
 * Best estimate of the dose that gives a pH; the inverse of `phAtDose`.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where no dose gives that pH
 */
export function doseAtPh(bath: Bath, knownDose: CubicMeters, target: PH): CubicMeters {
  checkWithin("known dose", knownDose, liquidVolume);
  checkWithin("known ph", bath.baseline, readablePh);
  checkWithin("target ph", target, readablePh);
  return cubicMeters(knownDose * estimateDoseAtPH(questionOf(bath), target).best);
}
