import { celsiusZero } from "../units/exact-constants.ts";
import { kilogramsPerCubicMeter } from "../units/quantity.ts";
import type { Kelvin, KilogramsPerCubicMeter } from "../units/quantity.ts";

/** Density of air-free water at 1 atm, 0 to 100 °C (Kell 1975, J. Chem. Eng. Data 20, 97). */
export function waterDensity(temperature: Kelvin): KilogramsPerCubicMeter {
  const t = temperature - celsiusZero;
  const numerator =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return kilogramsPerCubicMeter(numerator / (1 + 16.87985e-3 * t));
}
