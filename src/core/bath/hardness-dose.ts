import { checkWithin } from "../limits/domain.ts";
import { liquidVolume, sequesteringCapacity, waterHardness } from "../limits/domains.ts";
import { molarMassCalciumCarbonate } from "../units/exact-constants.ts";
import type { CubicMeters, Hardness, KilogramsPerCubicMeter } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";
import { checkFits, short } from "./extra-dose.ts";

export interface HardnessLoad {
  readonly volume: CubicMeters;
  readonly hardness: Hardness;
  /** Hardness that the label's rate already allows for. */
  readonly labelHardness: Hardness;
  /** Calcium carbonate that a volume of concentrate holds in solution. */
  readonly capacity: KilogramsPerCubicMeter;
}

/**
 * Extra concentrate that holds the hardness above the label's in solution: load / capacity, never
 * below zero.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "invalid" where the extra comes to more concentrate than water
 */
export function hardnessDose(load: HardnessLoad): CubicMeters {
  checkWithin("volume", load.volume, liquidVolume);
  checkWithin("hardness", load.hardness, waterHardness);
  checkWithin("label hardness", load.labelHardness, waterHardness);
  checkWithin("capacity", load.capacity, sequesteringCapacity);
  const excess = Math.max(0, load.hardness - load.labelHardness);
  const share = (excess * molarMassCalciumCarbonate) / load.capacity;
  checkFits(share, {
    figure: `Capacity is ${short(load.capacity)} mg/mL`,
    otherwise: `If the data sheet says grams per mL, it is ${short(1000 * load.capacity)} mg/mL`,
  });
  return cubicMeters(load.volume * share);
}
