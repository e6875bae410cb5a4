import type { EquivalentsPerKilogram, Kelvin, MolesPerKilogram, PH } from "../units/quantity.ts";
import { molesPerKilogram } from "../units/quantity.ts";
import type { Alkalinities } from "./alkalinities.ts";
import { alkalinities } from "./alkalinities.ts";
import { bufferIntensity } from "./buffer-intensity.ts";
import type { Composition } from "./composition.ts";
import { evaluateBalances } from "./equilibrium/balances.ts";
import type { ChemicalSystem } from "./equilibrium/chemical-system.ts";
import { reduceRows } from "./equilibrium/reduce-rows.ts";
import { logBruciteSaturation, logCalciteSaturation } from "./equilibrium/saturation.ts";
import type { SpeciesAmount } from "./equilibrium/species-amounts.ts";
import { speciesAmounts } from "./equilibrium/species-amounts.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { beginSweep, sweepPH } from "./equilibrium/sweep.ts";
import { checkComposition, checkTemperature } from "./limits.ts";

/** A solid: how far the water is from it, and how much of it has formed. */
interface SolidAnswer {
  /** Decimal logarithm of ion product over solubility product; undefined where an ion is missing. */
  readonly saturationIndex: number | undefined;
  readonly formed: MolesPerKilogram;
}

export interface Solution {
  readonly pH: PH;
  readonly ionicStrength: MolesPerKilogram;
  readonly species: readonly SpeciesAmount[];
  /** Titrations of what is dissolved and suspended, nothing precipitating further. */
  readonly alkalinities: Alkalinities;
  readonly bufferIntensity: EquivalentsPerKilogram;
  readonly calcite: SolidAnswer;
  readonly brucite: SolidAnswer;
}

function solidAnswer(logSaturation: number | undefined, formed: number): SolidAnswer {
  return {
    saturationIndex: logSaturation === undefined ? undefined : logSaturation / Math.LN10,
    formed: molesPerKilogram(formed),
  };
}

function readOff(system: ChemicalSystem, pH: PH): Omit<Solution, "alkalinities" | "bufferIntensity"> {
  // Ligands, saturated ions and solids follow from the last step.
  evaluateBalances(system);
  reduceRows(system);
  return {
    pH,
    ionicStrength: molesPerKilogram(system.ionicStrength),
    species: speciesAmounts(system),
    calcite: solidAnswer(logCalciteSaturation(system), system.calcite.amount),
    brucite: solidAnswer(logBruciteSaturation(system), system.brucite.amount),
  };
}

/**
 * Everything the engine knows of a solution closed to air at 1 atm. Throws `invalid` for totals or
 * temperature out of range and `no-answer` when the calculation does not settle. Not known: solids other
 * than calcite and brucite, surfactants, amine soaps, silicate polymers.
 */
export function solve(totals: Composition, temperature: Kelvin, solids: Solids = "none"): Solution {
  checkComposition(totals);
  checkTemperature(temperature);
  const sweep = beginSweep(totals, temperature, solids);
  sweepPH(sweep, totals);
  // A second pass starts from the answer and brings the balances of the listed species near rounding.
  const solution = readOff(sweep.system, sweepPH(sweep, totals));
  return {
    ...solution,
    alkalinities: alkalinities(totals, temperature),
    bufferIntensity: bufferIntensity(totals, temperature, solution.pH, solids),
  };
}
