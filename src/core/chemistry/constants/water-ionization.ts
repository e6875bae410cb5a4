import type { Kelvin } from "../../units/quantity.ts";
import { molarMassWater } from "./physical-constants.ts";
import { waterDensity } from "./water-density.ts";

/** Six water molecules hydrate the ions in this equation. */
const hydration = 6;

/**
 * Minus the decimal logarithm of water's ionization constant, molal, for liquid water at 1 atm.
 * IAPWS R11-07 of 2007 (Bandura & Lvov, J. Phys. Chem. Ref. Data 35 (2006) 15). Its revision of 2019 differs by no
 * more than 0.0002 to 50 °C and 0.0012 at 80 °C.
 */
export function waterIonization(temperature: Kelvin): number {
  const density = waterDensity(temperature);
  const association =
    density * Math.exp(-0.864671 + 8659.19 / temperature - (22786.2 / temperature ** 2) * Math.cbrt(density) ** 2);
  const pairing = 0.642044 - 56.8534 / temperature - 0.375754 * density;
  const idealGas = 0.61415 + 48251.33 / temperature - 67707.93 / temperature ** 2 + 1.01021e7 / temperature ** 3;
  return (
    -2 * hydration * (Math.log10(1 + association) - (association / (association + 1)) * density * pairing) +
    idealGas +
    2 * Math.log10(molarMassWater / 1000)
  );
}
