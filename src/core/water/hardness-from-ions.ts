import { checkWithin } from "../limits/domain.ts";
import { ionConcentration } from "../limits/domains.ts";
import { molarMassCalcium, molarMassMagnesium } from "../units/exact-constants.ts";
import type { Hardness, KilogramsPerCubicMeter } from "../units/quantity.ts";
import { hardness } from "../units/quantity.ts";

/**
 * Total hardness as the sum of calcium and magnesium, by calculation (Standard Methods 2340 B).
 *
 * @throws OutOfRange for a concentration outside its domain
 */
export function hardnessFromIons(calcium: KilogramsPerCubicMeter, magnesium: KilogramsPerCubicMeter): Hardness {
  checkWithin("calcium", calcium, ionConcentration);
  checkWithin("magnesium", magnesium, ionConcentration);
  return hardness(calcium / molarMassCalcium + magnesium / molarMassMagnesium);
}
