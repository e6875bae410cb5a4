import { checkWithin } from "../limits/domain.ts";
import { ionConcentration, ironFactor, softenerCapacity, waterHardness } from "../limits/domains.ts";
import { grain, molarMassCalciumCarbonate, usGallon } from "../units/exact-constants.ts";
import type { CubicMeters, Hardness, Kilograms, KilogramsPerCubicMeter } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";

export interface SoftenerService {
  /** Calcium carbonate that the softener takes up between two regenerations. */
  readonly capacity: Kilograms;
  readonly hardness: Hardness;
  readonly iron: KilogramsPerCubicMeter;
  /** Grains per US gallon of hardness that one milligram per liter of iron counts as: a convention of the trade. */
  readonly ironFactor: number;
}

const milligramPerLiter = 0.001; // kg/m3
const grainPerGallon = grain / usGallon; // kg/m3 of calcium carbonate

/** The highest of the conventions 2, 3 and 4, since it regenerates soonest; common practice, no source. */
export const usualIronFactor = 4;

/**
 * Volume that a softener treats between regenerations: capacity over the hardness, compensated for iron.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function softenerLife(service: SoftenerService): CubicMeters {
  checkWithin("capacity", service.capacity, softenerCapacity);
  checkWithin("hardness", service.hardness, { ...waterHardness, openLow: true });
  checkWithin("iron", service.iron, ionConcentration);
  checkWithin("iron factor", service.ironFactor, ironFactor);
  const ironAsHardness = (service.iron / milligramPerLiter) * service.ironFactor * grainPerGallon;
  return cubicMeters(service.capacity / (service.hardness * molarMassCalciumCarbonate + ironAsHardness));
}
