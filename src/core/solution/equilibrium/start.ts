import type { Composition } from "../composition.ts";
import { trace } from "./build-system.ts";
import type { ChemicalSystem } from "./chemical-system.ts";

/** Gives a system its totals. */
export function setTotals(system: ChemicalSystem, totals: Composition): void {
  let charge = -totals.chloride;
  for (const cation of system.cations) {
    // A metal that a sweep has thinned out to nothing keeps a logarithm.
    cation.total = Math.max(trace, totals[cation.component]);
    charge += cation.valence * cation.total;
  }
  for (const ligand of system.ligands) {
    ligand.total = totals[ligand.component];
    charge += ligand.basisCharge * ligand.total;
  }
  system.chloride = totals.chloride;
  system.hydrogenTotal = -charge;
}

/** pH that a solve starts from when nothing better is known. */
const firstGuess = 10;

/** That of pure water, mol/kg. */
const leastIonicStrength = 1e-7;

/** A cold start: the same answer to the last digit whatever was solved before. */
export function startCold(system: ChemicalSystem): void {
  system.calcite.present = false;
  system.brucite.present = false;
  system.calcite.amount = 0;
  system.brucite.amount = 0;
  system.logHydrogen = -firstGuess * Math.LN10;
  system.solutes = 0;
  let ionicStrength = system.chloride / 2;
  for (const cation of system.cations) {
    cation.logActivity = Math.log(cation.total);
    ionicStrength += cation.valence * cation.total;
  }
  system.ionicStrength = Math.max(leastIonicStrength, ionicStrength);
}
