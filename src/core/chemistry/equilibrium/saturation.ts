import type { ChemicalSystem } from "./chemical-system.ts";

/** ln(ion activity product / solubility product) of calcite; undefined without calcium or carbonate. */
export function logCalciteSaturation(system: ChemicalSystem): number | undefined {
  const { calcium, carbonate, calcite } = system;
  if (calcium === undefined || carbonate === undefined) return undefined;
  if (calcite.present) return 0;
  return calcium.logActivity + carbonate.logActivity + Math.log(carbonate.total) - calcite.logSolubility;
}

/** The same for brucite; undefined without magnesium. */
export function logBruciteSaturation(system: ChemicalSystem): number | undefined {
  const { magnesium, brucite } = system;
  if (magnesium === undefined) return undefined;
  if (brucite.present) return 0;
  return magnesium.logActivity - 2 * (system.logHydrogen - system.logWaterActivity) - brucite.logSolubility;
}
