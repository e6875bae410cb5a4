import { DomainError } from "../limits/domain-error.ts";
import type { Kelvin, PH } from "../units/quantity.ts";
import { kelvin } from "../units/quantity.ts";
import type { Composition } from "./composition.ts";
import { componentNames } from "./composition.ts";
import { celsiusZero } from "./constants/physical-constants.ts";

/** The constants were checked against published values from freezing to 75 degrees Celsius. */
const coldest = kelvin(celsiusZero);
const hottest = kelvin(celsiusZero + 80);

/** mol/kg of any one component; far beyond 0.5 the activity model has no footing. */
const mostOfOneComponent = 2;

/** Searches for an amount end here, mol or equivalents per kg. */
export const mostDissolved = 1;

const lowestPH = 0;
const highestPH = 14.5;

/** Throws `invalid` unless the temperature is one that the constants reach. */
export function checkTemperature(temperature: Kelvin): void {
  if (temperature >= coldest && temperature <= hottest) return;
  const given = Number.isFinite(temperature) ? (temperature - celsiusZero).toFixed(1) : String(temperature);
  throw new DomainError(
    "invalid",
    `Temperature is ${given} degrees Celsius; the chemistry covers 0 to 80 degrees Celsius`,
  );
}

/** Throws `invalid` unless every total is a number from 0 to 2 mol per kg of water. */
export function checkComposition(totals: Composition): void {
  for (const name of componentNames) {
    const total = totals[name];
    if (total >= 0 && total <= mostOfOneComponent) continue;
    const given = Number.isFinite(total) ? `${String(total)} mol per kg of water` : "too large";
    throw new DomainError(
      "invalid",
      `Total ${name} is ${given}; allowed is 0 to ${mostOfOneComponent} mol per kg of water`,
    );
  }
}

/** Throws `invalid`, naming the argument, unless the pH is from 0 to 14.5. */
export function checkPH(value: PH, argument: string): void {
  if (value >= lowestPH && value <= highestPH) return;
  throw new DomainError("invalid", `${argument} is ${String(value)}; allowed is pH ${lowestPH} to ${highestPH}`);
}
