import type { Kelvin } from "../../units/quantity.ts";
import { waterDensity } from "./water-density.ts";
import { waterPermittivity } from "./water-permittivity.ts";

/** Slopes of the Debye–Hückel limiting law in decimal logarithms and molality. */
export interface DebyeHueckel {
  /** kg^½ mol^-½. */
  readonly slope: number;
  /** kg^½ mol^-½ per ångström of ion size. */
  readonly sizeFactor: number;
}

/**
 * From the permittivity and density of water. The numerical factors collect the elementary charge,
 * Avogadro's and Boltzmann's constant (Helgeson, Kirkham & Flowers, Am. J. Sci. 281 (1981) 1249).
 */
export function debyeHueckel(temperature: Kelvin): DebyeHueckel {
  const rootDensity = Math.sqrt(waterDensity(temperature));
  const thermal = waterPermittivity(temperature) * temperature;
  const rootThermal = Math.sqrt(thermal);
  return {
    slope: (1.824829e6 * rootDensity) / (thermal * rootThermal),
    sizeFactor: (50.2916 * rootDensity) / rootThermal,
  };
}
