import { DomainError } from "../../limits/domain-error.ts";
import { updateActivity } from "./activity.ts";
import { evaluateBalances } from "./balances.ts";
import { at } from "./checked-array.ts";
import type { ChemicalSystem } from "./chemical-system.ts";
import { newtonStep, newtonStepDrift, sizeOf } from "./newton-step.ts";
import { reduceRows } from "./reduce-rows.ts";

/**
 * Natural logarithms, and a share of ionic strength. Errors do not square themselves: the activity of water, and a
 * feedback of ionic strength near 1, make the last steps shrink by a factor each. This leaves less than 1e-7 in pH,
 * as measured on random compositions.
 */
const settled = 1e-9;
/** Steps this short that shrink no more have come to the rounding of the balances. */
const nearRounding = 1e-7;
/** With moles of everything, beyond the model's footing, rounding may keep the steps longer; so short they will do. */
const coarsest = 1e-5;
const smallStep = 0.5;
const longestStep = 6;
const mostIterations = 300;
const mostHalvings = 40;
/** Ionic strength feeds back on itself; a feedback near 1 is a poor guide for a step. */
const leastDenominator = 0.3;

function move(system: ChemicalSystem, step: Float64Array, share: number): void {
  system.logHydrogen += share * at(step, 0);
  for (const cation of system.cations) cation.logActivity += share * at(step, cation.row);
}

/** Takes a long step, shortened until the convex function has gone down; gives back its new value. */
function takeLongStep(system: ChemicalSystem, size: number, height: number): number {
  let slope = 0;
  for (let row = 0; row < system.rows; row += 1) slope += at(system.gradient, row) * at(system.step, row);
  let share = Math.min(1, longestStep / size);
  move(system, system.step, share);
  let reached = evaluateBalances(system);
  for (let halving = 0; halving < mostHalvings && !(reached <= height + 1e-4 * share * slope); halving += 1) {
    share /= 2;
    move(system, system.step, -share);
    reached = evaluateBalances(system);
  }
  return reached;
}

/** The change of ionic strength that the step and its own feedback call for. */
function strengthStep(system: ChemicalSystem): number {
  let change = system.measuredStrength - system.ionicStrength;
  let feedback = system.strengthDrift;
  for (let row = 0; row < system.rows; row += 1) {
    change += at(system.strengthSlopes, row) * at(system.step, row);
    feedback += at(system.strengthSlopes, row) * at(system.stepDrift, row);
  }
  const step = change / Math.max(leastDenominator, 1 - feedback);
  return Math.max(-0.5 * system.ionicStrength, Math.min(system.ionicStrength, step));
}

/**
 * Brings a system to equilibrium from its present guess: Newton steps on the balances and, once they are
 * short, on ionic strength with them. Throws `no-answer` when it does not settle.
 */
export function equilibrate(system: ChemicalSystem): void {
  updateActivity(system);
  let height = evaluateBalances(system);
  let last = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    reduceRows(system);
    const size = newtonStep(system);
    if (size > smallStep) {
      height = takeLongStep(system, size, height);
      continue;
    }
    newtonStepDrift(system);
    let change = strengthStep(system);
    const drift = Math.abs(change) * sizeOf(system.stepDrift);
    if (drift > smallStep) change *= smallStep / drift;
    move(system, system.step, 1);
    move(system, system.stepDrift, change);
    system.ionicStrength += change;
    updateActivity(system);
    const rest = Math.max(size + drift, Math.abs(change) / system.ionicStrength);
    if (rest < settled || (last < nearRounding && rest >= last)) return;
    last = rest;
    height = evaluateBalances(system);
    if (!Number.isFinite(height)) break;
  }
  if (last < coarsest && Number.isFinite(height)) return;
  throw new DomainError("no-answer", "The equilibrium calculation did not settle for this composition and temperature");
}
