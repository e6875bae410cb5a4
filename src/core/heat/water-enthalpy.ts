import type { Points } from "../numeric/interpolate.ts";
import { interpolate } from "../numeric/interpolate.ts";
import { celsiusZero } from "../units/exact-constants.ts";
import type { Kelvin } from "../units/quantity.ts";

/** Enthalpy of the saturated liquid at temperatures in °C, kJ/kg, to two decimals: IAPWS-95. */
const points: Points = [
  [0, -0.04],
  [5, 21.02],
  [10, 42.02],
  [15, 62.98],
  [20, 83.91],
  [25, 104.83],
  [30, 125.73],
  [35, 146.63],
  [40, 167.53],
  [45, 188.43],
  [50, 209.34],
  [55, 230.26],
  [60, 251.18],
  [65, 272.12],
  [70, 293.07],
  [75, 314.03],
  [80, 335.01],
  [85, 356.01],
  [90, 377.04],
  [95, 398.09],
  [100, 419.17],
];

/** Heat content of liquid water, J/kg, for 0 to 100 °C; its differences are the specific heat added up. */
export function waterEnthalpy(temperature: Kelvin): number {
  return 1000 * interpolate(points, temperature - celsiusZero);
}
