import { waterDensity } from "../../../src/core/chemistry/constants/water-density.ts";
import type { Kelvin } from "../../../src/core/units/quantity.ts";

/**
 * The older international formula, kept to show how far two respectable sources differ: 0.013 at 60 °C.
 * Marshall & Franck, J. Phys. Chem. Ref. Data 10 (1981) 295; coefficients from memory.
 */
export function waterIonizationMarshallFranck(temperature: Kelvin): number {
  const logDensity = Math.log10(waterDensity(temperature));
  const inverse = 1 / temperature;
  const withoutDensity = -4.098 + inverse * (-3245.2 + inverse * (2.2362e5 - inverse * 3.984e7));
  const densityPower = 13.957 + inverse * (-1262.3 + inverse * 8.5641e5);
  return -(withoutDensity + densityPower * logDensity);
}
