import { combine } from "../../chemistry/composition.ts";
import { beginSweep, sweepPH } from "../../chemistry/equilibrium/sweep.ts";
import { checkComposition, checkPH, mostDissolved } from "../../chemistry/limits.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { PH } from "../../units/quantity.ts";
import type { BathQuestion } from "./bath-question.ts";
import { anchoredBaths } from "./bath-question.ts";
import type { CalibratedBath, LoadLine } from "./calibrated-bath.ts";
import { loadAtPH } from "./calibrated-bath.ts";
import type { Estimate } from "./estimate.ts";
import { answersOf, estimateFrom } from "./estimate.ts";

const mostTimes = 100;

/** A unit of load takes the place of some of the water, until there is only concentrate. */
function lineOf({ builder, water, load, openingShare }: CalibratedBath): LoadLine {
  const waterPerLoad = openingShare / load;
  return {
    base: water,
    direction: combine(1, builder, -waterPerLoad, water),
    most: Math.min(mostDissolved, 1 / waterPerLoad),
  };
}

function pHWithDose(bath: CalibratedBath, times: number): PH {
  const share = Math.min(1, times * bath.openingShare);
  const totals = combine(times * bath.load, bath.builder, 1 - share, bath.water);
  checkComposition(totals);
  return sweepPH(beginSweep(totals, bath.temperature, bath.solids), totals);
}

/**
 * The largest multiple of the known dose that the chemistry reaches with every candidate of the builder; the
 * search of `estimateDoseAtPH` ends there too. At most 100. Throws as `anchoredBaths`.
 */
export function mostTimesOf(question: BathQuestion): number {
  return Math.min(mostTimes, ...anchoredBaths(question).map((bath) => lineOf(bath).most / bath.load));
}

/**
 * pH of the same bath with another dose, given as a multiple of the known one. Throws `invalid` for a
 * multiple that is not from 0 to `mostTimesOf`, and as `anchoredBaths`.
 */
export function estimatePHAtDose(question: BathQuestion, times: number): Estimate {
  const most = mostTimesOf(question);
  if (!(times >= 0 && times <= most)) {
    throw new DomainError(
      "invalid",
      `The new dose is ${String(times)} times the known dose; allowed is 0 to ${String(most)} times`,
    );
  }
  return estimateFrom(anchoredBaths(question).map((bath) => [pHWithDose(bath, times)]));
}

/** The multiple of the known dose that gives a pH; the inverse of `estimatePHAtDose`. */
export function estimateDoseAtPH(question: BathQuestion, target: PH): Estimate {
  checkPH(target, "Target pH");
  return estimateFrom(answersOf(anchoredBaths(question), (bath) => [loadAtPH(bath, target, lineOf(bath)) / bath.load]));
}
