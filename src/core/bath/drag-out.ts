import { checkWithin } from "../limits/domain.ts";
import { loadCount, volumeInAnyUnit } from "../limits/domains.ts";
import type { CubicMeters } from "../units/quantity.ts";

/**
 * Share of its strength that a bath keeps when every load carries solution out and water takes its place:
 * (1 − drag-out / volume)^loads.
 *
 * @throws OutOfRange for a value outside its domain, such as a load that carries out the whole bath
 */
export function strengthLeft(volume: CubicMeters, perLoad: CubicMeters, loads: number): number {
  checkWithin("volume", volume, volumeInAnyUnit);
  checkWithin("per load", perLoad, { ...volumeInAnyUnit, high: volume, openHigh: true });
  checkWithin("loads", loads, { ...loadCount, openLow: true });
  return (1 - perLoad / volume) ** loads;
}
