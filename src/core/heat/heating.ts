import { waterDensity } from "../chemistry/constants/water-density.ts";
import { checkWithin } from "../limits/domain.ts";
import { heaterPower, liquidVolume, liquidWater, shareOfWhole } from "../limits/domains.ts";
import type { CubicMeters, Joules, Kelvin, Watts } from "../units/quantity.ts";
import { joules } from "../units/quantity.ts";
import { waterEnthalpy } from "./water-enthalpy.ts";

/** Kilograms per cubic meter in a gram per cubic centimeter. */
const kilogramsInGram = 1000;

/**
 * Heat that warms a volume of water, measured at the first temperature: volume × density × the specific heat added up
 * between both temperatures. No losses.
 *
 * @throws OutOfRange for a value outside its domain, or a second temperature that is not above the first
 */
export function heatingEnergy(volume: CubicMeters, from: Kelvin, to: Kelvin): Joules {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("from", from, { ...liquidWater, openHigh: true });
  checkWithin("to", to, { ...liquidWater, low: from, openLow: true });
  return joules(volume * kilogramsInGram * waterDensity(from) * (waterEnthalpy(to) - waterEnthalpy(from)));
}

/**
 * Seconds in which heaters bring up an energy: energy / (power × efficiency).
 *
 * @throws OutOfRange for a power or efficiency outside its domain
 */
export function heatingTime(energy: Joules, power: Watts, efficiency: number): number {
  checkWithin("kilowatts", power, heaterPower);
  checkWithin("efficiency", efficiency, shareOfWhole);
  return energy / (power * efficiency);
}
