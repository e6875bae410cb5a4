import type { ComponentName } from "../composition.ts";
import { componentNames } from "../composition.ts";
import type { Cation, ChemicalSystem, Group, Ligand, Solid, Species } from "./chemical-system.ts";
import type { CationName, FamilyDefinition, LigandName, SpeciesDefinition } from "./species-definition.ts";
import { cationFamilies, hydrogenIon, hydroxide, ligandFamilies } from "./species-table.ts";

function buildSpecies(definition: SpeciesDefinition): Species {
  // Numbers start as fractions so that the engine's number fields never change their representation.
  return {
    definition,
    hydrogen: definition.hydrogen,
    water: definition.water,
    chargeSquared: definition.charge ** 2,
    halfChargeSquared: definition.charge ** 2 / 2,
    logFormation: 0.5,
    slope: 0.5,
    sizeFactor: 0.5,
    linear: 0.5,
    logShift: 0.5,
    shiftSlope: 0.5,
  };
}

function buildCation(family: FamilyDefinition<CationName>, row: number): Cation {
  return {
    component: family.component,
    valence: family.basisCharge,
    row,
    species: family.species.map(buildSpecies),
    total: 0.5,
    totalSlope: 0.5,
    logActivity: 0.5,
  };
}

function buildLigand(family: FamilyDefinition<LigandName>, cations: readonly Cation[]): Ligand {
  const groups: Group[] = [];
  for (const cation of [undefined, ...cations]) {
    const species = family.species.filter((one) => one.cation === cation?.component).map(buildSpecies);
    if (species.length > 0) groups.push({ cation, species, sum: 0.5, hydrogenSum: 0.5, chargeSum: 0.5, slopeSum: 0.5 });
  }
  return {
    component: family.component,
    basisCharge: family.basisCharge,
    groups,
    squares: { hydrogenSquares: 0.5, hydrogenCharge: 0.5, hydrogenSlope: 0.5, chargeSlope: 0.5 },
    total: 0.5,
    totalSlope: 0.5,
    logActivity: 0.5,
  };
}

const solid = (): Solid => ({ logSolubility: 0.5, present: false, amount: 0.5 });

/** A system of the given components, ready for a temperature and totals. */
export function buildSystem(present: ReadonlySet<ComponentName>): ChemicalSystem {
  const isPresent = (family: { readonly component: ComponentName }): boolean => present.has(family.component);
  const cations = cationFamilies.filter(isPresent).map((family, index) => buildCation(family, index + 1));
  const ligands = ligandFamilies.filter(isPresent).map((family) => buildLigand(family, cations));
  const hydrogen = buildSpecies(hydrogenIon);
  const hydroxideIon = buildSpecies(hydroxide);
  const rows = cations.length + 1;
  return {
    hydrogenIon: hydrogen,
    hydroxide: hydroxideIon,
    cations,
    ligands,
    species: [
      hydrogen,
      hydroxideIon,
      ...cations.flatMap((cation) => cation.species),
      ...ligands.flatMap((ligand) => ligand.groups.flatMap((group) => group.species)),
    ],
    calcium: cations.find((cation) => cation.component === "calcium"),
    magnesium: cations.find((cation) => cation.component === "magnesium"),
    carbonate: ligands.find((ligand) => ligand.component === "carbonate"),
    calcite: solid(),
    brucite: solid(),
    rows,
    gradient: new Float64Array(rows),
    curvature: new Float64Array(rows * rows),
    drift: new Float64Array(rows),
    strengthSlopes: new Float64Array(rows),
    strengthDrift: 0.5,
    measuredStrength: 0.5,
    solutes: 0.5,
    step: new Float64Array(rows),
    stepDrift: new Float64Array(rows),
    amountDrift: new Float64Array(rows),
    stepPerAmount: new Float64Array(rows),
    hydrogenSlopes: new Float64Array(rows),
    border: {
      hydrogen: 0.5,
      hydrogenPerStrength: 0.5,
      hydrogenPerAmount: 0.5,
      strength: 0.5,
      strengthPerStrength: 0.5,
      strengthPerAmount: 0.5,
    },
    work: new Float64Array(rows * rows),
    chloride: 0.5,
    hydrogenTotal: 0.5,
    temperature: 0.5,
    logHydrogen: 0.5,
    hydrogenIsGiven: false,
    acidToClose: 0.5,
    ionicStrength: 0.5,
    logWaterActivity: 0.5,
  };
}

/** Below this a component has no say in pH and is left out. */
export const trace = 1e-15; // mol/kg

/** One bit for each component that is present. */
export function presenceOf(totals: Readonly<Record<ComponentName, number>>): number {
  let bits = 0;
  let bit = 1;
  for (const name of componentNames) {
    if (totals[name] > trace && name !== "chloride") bits |= bit;
    bit *= 2;
  }
  return bits;
}

/** The components that a pattern of bits stands for. */
export function componentsIn(bits: number): ReadonlySet<ComponentName> {
  return new Set(componentNames.filter((_name, index) => (bits & (2 ** index)) !== 0));
}
