import type { PH } from "../../units/quantity.ts";
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

/** Gives a system the totals of base + amount·direction, and the direction for the search of the amount. */
export function setTotalsAlong(
  system: ChemicalSystem,
  base: Composition,
  direction: Composition,
  amount: number,
): void {
  let charge = -base.chloride - amount * direction.chloride;
  for (const cation of system.cations) {
    cation.totalSlope = direction[cation.component];
    cation.total = Math.max(trace, base[cation.component] + amount * cation.totalSlope);
    charge += cation.valence * cation.total;
  }
  for (const ligand of system.ligands) {
    ligand.totalSlope = direction[ligand.component];
    ligand.total = base[ligand.component] + amount * ligand.totalSlope;
    charge += ligand.basisCharge * ligand.total;
  }
  system.chloride = base.chloride + amount * direction.chloride;
  system.hydrogenTotal = -charge;
}

/** That of pure water, mol/kg. */
const leastIonicStrength = 1e-7;

/** Forgets what was solved before; the totals must be set. */
export function startCold(system: ChemicalSystem, guess: PH): void {
  system.calcite.present = false;
  system.brucite.present = false;
  system.calcite.amount = 0;
  system.brucite.amount = 0;
  system.logHydrogen = -Number(guess) * Math.LN10;
  system.solutes = 0;
  let ionicStrength = system.chloride / 2;
  for (const cation of system.cations) {
    cation.logActivity = Math.log(cation.total);
    ionicStrength += cation.valence * cation.total;
  }
  system.ionicStrength = Math.max(leastIonicStrength, ionicStrength);
}
