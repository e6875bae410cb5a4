import { checkWithin } from "../limits/domain.ts";
import {
  langelierAlkalinity,
  langelierHardness,
  langelierPh,
  langelierSolids,
  langelierTemperature,
} from "../limits/domains.ts";
import { molarMassCalciumCarbonate } from "../units/exact-constants.ts";
import type { Alkalinity, Hardness, Kelvin, KilogramsPerCubicMeter, PH } from "../units/quantity.ts";

export interface SupplyWater {
  readonly ph: PH;
  readonly temperature: Kelvin;
  /** Hardness of the calcium alone. */
  readonly calciumHardness: Hardness;
  readonly alkalinity: Alkalinity;
  readonly dissolvedSolids: KilogramsPerCubicMeter;
}

/** The formula's constants belong to milligrams per liter, 1000 to the kilogram per cubic meter. */
const milligramsPerLiter = 1000;

/** Milligrams per liter of calcium carbonate in so many moles per cubic meter. */
function asCalciumCarbonate(moles: number): number {
  return moles * molarMassCalciumCarbonate * milligramsPerLiter;
}

/**
 * Langelier saturation index, pH − [(9.3 + A + B) − (C + D)], with A = (log10 TDS − 1)/10,
 * B = −13.12 log10 T + 34.55 (kelvin), C = log10 (calcium as CaCO3) − 0.4 and D = log10 (alkalinity as CaCO3), all in
 * mg/L: the form of the Carrier System Design Manual as widely reprinted; method family of Standard Methods 2330.
 *
 * @returns above 0 where the water tends to deposit calcium carbonate, below 0 where it tends to dissolve it
 * @throws OutOfRange for a value outside its domain
 */
export function langelierIndex(water: SupplyWater): number {
  checkWithin("ph", water.ph, langelierPh);
  checkWithin("temperature", water.temperature, langelierTemperature);
  checkWithin("calcium hardness", water.calciumHardness, langelierHardness);
  checkWithin("alkalinity", water.alkalinity, langelierAlkalinity);
  checkWithin("tds", water.dissolvedSolids, langelierSolids);
  const a = (Math.log10(water.dissolvedSolids * milligramsPerLiter) - 1) / 10;
  const b = -13.12 * Math.log10(water.temperature) + 34.55;
  const c = Math.log10(asCalciumCarbonate(water.calciumHardness)) - 0.4;
  const d = Math.log10(asCalciumCarbonate(water.alkalinity / 2));
  return water.ph - (9.3 + a + b - (c + d));
}
