import type { Kelvin } from "../../units/quantity.ts";
import { celsiusZero } from "./physical-constants.ts";

/**
 * Density of air-free water at 1 atm, g/cm3, for 0 to 100 °C. Coefficients of Kell, J. Chem. Eng. Data
 * 20 (1975) 97.
 */
export function waterDensity(temperature: Kelvin): number {
  const t = temperature - celsiusZero;
  const numerator =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return numerator / (1 + 16.87985e-3 * t) / 1000;
}
