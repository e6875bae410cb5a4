import type { Kelvin } from "../../units/quantity.ts";
import { daviesLinear } from "../constants/activity-model.ts";
import type { DebyeHueckel } from "../constants/debye-hueckel.ts";
import { debyeHueckel } from "../constants/debye-hueckel.ts";
import { logKAt } from "../constants/equilibrium-constant.ts";
import { brucite, calcite } from "../constants/mineral-constants.ts";
import type { ChemicalSystem, Species } from "./chemical-system.ts";

function setSpecies(species: Species, temperature: Kelvin, water: DebyeHueckel): void {
  let logK = 0;
  for (const constant of species.definition.formation) logK += logKAt(constant, temperature);
  species.logFormation = logK * Math.LN10;
  const model = species.definition.activity;
  const slope = Math.LN10 * water.slope * species.chargeSquared;
  species.slope = slope;
  if (model.type === "davies") {
    species.sizeFactor = 1;
    species.linear = daviesLinear * slope;
  } else {
    species.sizeFactor = model.type === "ion" ? water.sizeFactor * model.size : 0;
    species.linear = Math.LN10 * model.linear;
  }
}

/** Brings all constants of a system to a temperature; nothing to do when it is there already. */
export function setTemperature(system: ChemicalSystem, temperature: Kelvin): void {
  if (system.temperature === temperature) return;
  const water = debyeHueckel(temperature);
  for (const species of system.species) setSpecies(species, temperature, water);
  system.calcite.logSolubility = Math.LN10 * logKAt(calcite, temperature);
  system.brucite.logSolubility = Math.LN10 * logKAt(brucite, temperature);
  system.temperature = temperature;
}
