import { DomainError } from "../domain-error.ts";
import { combine } from "../solution/composition.ts";
import { beginSweep, sweepPH } from "../solution/equilibrium/sweep.ts";
import { checkComposition, checkPH } from "../solution/limits.ts";
import type { PH } from "../solution/quantities.ts";
import { loadAtPH } from "./anchored-bath.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { anchoredBaths } from "./bath-question.ts";
import type { BathQuestion } from "./bath-question.ts";
import { answersOf, estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";

const mostTimes = 100;

const waterShare = (bath: AnchoredBath, load: number): number => Math.max(0, 1 - (load / bath.load) * bath.openingShare);

function pHWithDose(bath: AnchoredBath, times: number): PH {
  const load = times * bath.load;
  const totals = combine(load, bath.builder, waterShare(bath, load), bath.water);
  checkComposition(totals);
  return sweepPH(beginSweep(totals, bath.temperature, bath.solids), totals);
}

/**
 * pH of the same bath with another dose, given as a multiple of the known one. Throws `invalid` for a
 * multiple that is not from 0 to 100, and as `anchoredBaths`.
 */
export function estimatePHAtDose(question: BathQuestion, times: number): Estimate {
  if (!(times >= 0 && times <= mostTimes)) {
    throw new DomainError("invalid", `The new dose is ${String(times)} times the known dose; allowed is 0 to ${mostTimes} times`);
  }
  return estimateFrom(anchoredBaths(question).map((bath) => [pHWithDose(bath, times)]));
}

/** The multiple of the known dose that gives a pH; the inverse of `estimatePHAtDose`. */
export function estimateDoseAtPH(question: BathQuestion, target: PH): Estimate {
  checkPH(target, "Target pH");
  return estimateFrom(answersOf(anchoredBaths(question), (bath) => [loadAtPH(bath, target, (load) => waterShare(bath, load)) / bath.load]));
}
