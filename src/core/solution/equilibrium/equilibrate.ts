import { DomainError } from "../../domain-error.ts";
import { measureIonicStrength, measureWaterActivity, updateActivityCoefficients } from "./activity.ts";
import { evaluateBalances } from "./balances.ts";
import type { ChemicalSystem } from "./chemical-system.ts";
import { at } from "./checked-array.ts";
import { newtonStep } from "./newton-step.ts";
import { reduceRows } from "./reduce-rows.ts";

/** All in natural logarithms. A step below `settled` changes pH by less than 1e-10. */
const settled = 1e-10;
const smallStep = 0.1;
const longestStep = 6;
const mostIterations = 300;
const mostHalvings = 30;

function move(system: ChemicalSystem, share: number): void {
  system.logHydrogen += share * at(system.step, 0);
  for (const cation of system.cations) cation.logActivity += share * at(system.step, cation.row);
}

/** Takes a long step, shortened until the convex function has gone down. */
function takeLongStep(system: ChemicalSystem, size: number, height: number): void {
  let slope = 0;
  for (let row = 0; row < system.rows; row += 1) slope += at(system.gradient, row) * at(system.step, row);
  let share = Math.min(1, longestStep / size);
  move(system, share);
  for (let halving = 0; halving < mostHalvings; halving += 1) {
    if (evaluateBalances(system) <= height + 1e-4 * share * slope) return;
    move(system, -share / 2);
    share /= 2;
  }
}

/** One round of the fixed point in ionic strength; gives back the relative change. */
function renewActivity(system: ChemicalSystem, lastChange: number): number {
  const measured = measureIonicStrength(system, system.acidToClose);
  const change = measured - system.ionicStrength;
  // A change that does not shrink is a swing about the answer: go half way.
  const share = Math.abs(change) > 0.7 * Math.abs(lastChange) ? 0.5 : 1;
  system.ionicStrength += share * change;
  system.logWaterActivity = measureWaterActivity(system);
  updateActivityCoefficients(system);
  return change;
}

/**
 * Brings a system to equilibrium from its present guess: Newton steps on the balances, with the activity
 * coefficients renewed as soon as the steps are small. Throws `no-answer` when it does not settle.
 */
export function equilibrate(system: ChemicalSystem): void {
  updateActivityCoefficients(system);
  let change = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    const height = evaluateBalances(system);
    reduceRows(system);
    const size = newtonStep(system);
    if (size > smallStep) {
      takeLongStep(system, size, height);
      continue;
    }
    if (!(size <= smallStep)) break;
    move(system, 1);
    change = renewActivity(system, change);
    if (size < settled && Math.abs(change) <= settled * system.ionicStrength) return;
  }
  throw new DomainError("no-answer", "The equilibrium calculation did not settle for this composition and temperature");
}
