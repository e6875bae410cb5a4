import type { Kelvin } from "../../units/quantity.ts";

const atmosphere = 1.01325; // bar

/**
 * Relative permittivity of water at 1 atm, for 0 to 100 °C. Bradley & Pitzer, J. Phys. Chem. 83 (1979)
 * 1599.
 */
export function waterPermittivity(temperature: Kelvin): number {
  const at1000Bar = 342.79 * Math.exp(temperature * (-5.0866e-3 + 9.469e-7 * temperature));
  const c = -2.0525 + 3115.9 / (temperature - 182.89);
  const b = -8032.5 + 4.2142e6 / temperature + 2.1417 * temperature;
  return at1000Bar + c * Math.log((b + atmosphere) / (b + 1000));
}
