import type { MolesPerKilogram } from "../../units/quantity.ts";
import { molesPerKilogram } from "../../units/quantity.ts";
import type { ChemicalSystem, Species } from "./chemical-system.ts";

/** One dissolved species of an answer. */
export interface SpeciesAmount {
  readonly formula: string;
  readonly charge: number;
  readonly amount: MolesPerKilogram;
}

function fromLogarithm(species: Species, hydrogen: number, logHydrogen: number, logOther: number): SpeciesAmount {
  const { formula, charge } = species.definition;
  return { formula, charge, amount: molesPerKilogram(Math.exp(species.logShift + hydrogen * logHydrogen + logOther)) };
}

/** The amounts of all dissolved species of a settled system. */
export function speciesAmounts(system: ChemicalSystem): readonly SpeciesAmount[] {
  const { logHydrogen } = system;
  const amounts = [
    fromLogarithm(system.hydrogenIon, 1, logHydrogen, 0),
    fromLogarithm(system.hydroxide, -1, logHydrogen, 0),
    { formula: "Cl-", charge: -1, amount: molesPerKilogram(system.chloride) },
  ];
  for (const cation of system.cations) {
    for (const species of cation.species)
      amounts.push(fromLogarithm(species, species.hydrogen, logHydrogen, cation.logActivity));
  }
  for (const ligand of system.ligands) {
    const held = system.calcite.present && ligand === system.carbonate;
    const logLigand = ligand.logActivity + (held ? 0 : Math.log(ligand.total));
    for (const group of ligand.groups) {
      const logMetal = group.cation?.logActivity ?? 0;
      for (const species of group.species)
        amounts.push(fromLogarithm(species, species.hydrogen, logHydrogen, logLigand + logMetal));
    }
  }
  return amounts;
}
