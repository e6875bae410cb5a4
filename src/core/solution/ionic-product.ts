import { waterDensity } from "./water-density.ts";
import type { Kelvin } from "../units/quantity.ts";

/** Coefficients of IAPWS R11-07, written from memory and checked against its published values. */
const coordination = 6;
const alpha = [-0.864671, 8659.19, -22786.2] as const;
const beta = [0.642044, -56.8534, -0.375754] as const;
const gamma = [0.61415, 48251.33, -67707.93, 10102100] as const;
const molarMassWater = 0.018015268; // kg/mol

/**
 * pKw, minus the decimal logarithm of the ionic product of water (molal), of liquid water at 1 atm,
 * 0 to 100 °C.
 *
 * Source: IAPWS release R11-07, with the density of Kell 1975.
 */
export function ionicProductExponent(temperature: Kelvin): number {
  const density = waterDensity(temperature) / 1000; // g/cm3
  const q = density * Math.exp(alpha[0] + alpha[1] / temperature + (alpha[2] / temperature ** 2) * density ** (2 / 3));
  const association = Math.log10(1 + q) - (q / (q + 1)) * density * (beta[0] + beta[1] / temperature + beta[2] * density);
  const idealGas = gamma[0] + gamma[1] / temperature + gamma[2] / temperature ** 2 + gamma[3] / temperature ** 3;
  return -2 * coordination * association + idealGas + 2 * Math.log10(molarMassWater);
}
