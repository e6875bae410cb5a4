import type { Composition } from "../composition.ts";
import { updateActivity } from "./activity.ts";
import { addAmountSlopes } from "./amount-slopes.ts";
import { evaluateBalances } from "./balances.ts";
import { at } from "./checked-array.ts";
import type { Border, ChemicalSystem } from "./chemical-system.ts";
import { newtonStep, newtonStepDrift, newtonStepPerAmount } from "./newton-step.ts";
import { dropRow } from "./reduce-rows.ts";
import { setTotalsAlong } from "./start.ts";

/** Relative; leaves less than 1e-5 of the amount, as measured on random concentrates. */
const settled = 1e-5;
const mostIterations = 20;
/** One step may not take more of an amount or an ionic strength than this share of it. */
const mostTaken = 0.8;

const within = (step: number, value: number): number => Math.max(-mostTaken * value, Math.min(step, 4 * value));

/** Folds the metals' own response into the two equations that are left: hydrogen and ionic strength. */
function writeBorder(system: ChemicalSystem, chlorideSlope: number, border: Border): void {
  const {
    rows,
    gradient,
    curvature,
    drift,
    amountDrift,
    hydrogenSlopes,
    strengthSlopes,
    step,
    stepDrift,
    stepPerAmount,
  } = system;
  border.strengthPerAmount = addAmountSlopes(system, chlorideSlope);
  border.hydrogen = at(gradient, 0);
  border.hydrogenPerStrength = at(drift, 0);
  border.hydrogenPerAmount = at(amountDrift, 0);
  border.strength = system.measuredStrength - system.ionicStrength;
  border.strengthPerStrength = system.strengthDrift - 1;
  for (let row = 1; row < rows; row += 1) hydrogenSlopes[row] = at(curvature, row);
  dropRow(system, 0);
  amountDrift[0] = 0;
  newtonStep(system);
  newtonStepDrift(system);
  newtonStepPerAmount(system);
  for (let row = 1; row < rows; row += 1) {
    const perMetal = at(hydrogenSlopes, row);
    border.hydrogen += perMetal * at(step, row);
    border.hydrogenPerStrength += perMetal * at(stepDrift, row);
    border.hydrogenPerAmount += perMetal * at(stepPerAmount, row);
    const strengthPerMetal = at(strengthSlopes, row);
    border.strength += strengthPerMetal * at(step, row);
    border.strengthPerStrength += strengthPerMetal * at(stepDrift, row);
    border.strengthPerAmount += strengthPerMetal * at(stepPerAmount, row);
  }
}

function move(system: ChemicalSystem, strengthStep: number, amountStep: number): number {
  let longest = 0;
  for (const cation of system.cations) {
    const { row } = cation;
    const step =
      at(system.step, row) + strengthStep * at(system.stepDrift, row) + amountStep * at(system.stepPerAmount, row);
    cation.logActivity += step;
    longest = Math.max(longest, Math.abs(step));
  }
  return longest;
}

/**
 * The amount of `direction` that, added to `base`, gives the hydrogen-ion activity that the system has been
 * set to: Newton's method on all balances, ionic strength and the amount at once, nothing precipitating.
 * Starts from a positive `guess`; undefined where it does not settle on a positive amount up to `most`,
 * which a slower search must then look into.
 */
export function seekAmount(
  system: ChemicalSystem,
  base: Composition,
  direction: Composition,
  guess: number,
  most: number,
): number | undefined {
  const { border } = system;
  let amount = Math.min(guess, most);
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    setTotalsAlong(system, base, direction, amount);
    updateActivity(system);
    evaluateBalances(system);
    writeBorder(system, direction.chloride, border);
    const determinant =
      border.hydrogenPerStrength * border.strengthPerAmount - border.hydrogenPerAmount * border.strengthPerStrength;
    const strengthStep = within(
      (border.hydrogenPerAmount * border.strength - border.strengthPerAmount * border.hydrogen) / determinant,
      system.ionicStrength,
    );
    const amountStep = within(
      -(border.hydrogen + border.hydrogenPerStrength * strengthStep) / border.hydrogenPerAmount,
      amount,
    );
    const longest = move(system, strengthStep, amountStep);
    system.ionicStrength += strengthStep;
    amount += amountStep;
    if (!(amount <= most && longest < Number.POSITIVE_INFINITY)) return undefined;
    const still = Math.max(longest, Math.abs(amountStep) / amount, Math.abs(strengthStep) / system.ionicStrength);
    if (still < settled) return amount;
  }
  return undefined;
}
