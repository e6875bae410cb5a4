import type { ActivityModel } from "../constants/activity-model.ts";
import type { EquilibriumConstant } from "../constants/equilibrium-constant.ts";

/** Metals that form complexes or pairs. */
export type CationName = "sodium" | "potassium" | "calcium" | "magnesium";

/** Components that take up hydrogen ions or metals. */
export type LigandName =
  "sulfate" | "carbonate" | "silicate" | "phosphate" | "borate" | "citrate" | "edta" | "monoethanolamine" | "acetate";

/** One dissolved species, made of its family's basis ion, hydrogen ions and at most one metal ion. */
export interface SpeciesDefinition {
  readonly formula: string;
  readonly charge: number;
  /** Hydrogen ions taken up; negative where the species forms by giving them off. */
  readonly hydrogen: number;
  /** Water molecules taken up. */
  readonly water: number;
  readonly cation?: CationName;
  readonly activity: ActivityModel;
  /** The formation constant is the product of these. */
  readonly formation: readonly EquilibriumConstant[];
}

/** A component and its species; the first species is the basis ion without hydrogen or metal. */
export interface FamilyDefinition<Name extends string> {
  readonly component: Name;
  readonly basisCharge: number;
  readonly species: readonly SpeciesDefinition[];
}
