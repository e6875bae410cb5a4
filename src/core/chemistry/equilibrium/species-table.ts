import * as acid from "../constants/acid-constants.ts";
import type { ActivityModel } from "../constants/activity-model.ts";
import { davies, ionOfSize, neutral } from "../constants/activity-model.ts";
import type { EquilibriumConstant } from "../constants/equilibrium-constant.ts";
import * as pair from "../constants/pair-constants.ts";
import type { CationName, FamilyDefinition, LigandName, SpeciesDefinition } from "./species-definition.ts";

/**
 * The first argument of `ionOfSize` is the ion size in ångström, the second the linear term, as PHREEQC's phreeqc.dat
 * copies them: mostly Truesdell & Jones, J. Res. USGS 2 (1974) 233; Na+ PHREEQC's fit to the solubility of halite; CO2
 * Rumpf et al., J. Sol. Chem. 23 (1994) 431; silicate and the two acid phosphates WATEQ. PO4-3 and acetate: Kielland, J.
 * Am. Chem. Soc. 59 (1937) 1675. Citrate, EDTA and ethanolammonium are from memory. Ions without an entry go by Davies.
 */
const alone = (formula: string, charge: number, activity: ActivityModel): SpeciesDefinition => ({
  formula,
  charge,
  hydrogen: 0,
  water: 0,
  activity,
  formation: [],
});

const protonated = (
  formula: string,
  charge: number,
  hydrogen: number,
  activity: ActivityModel,
  ...formation: readonly EquilibriumConstant[]
): SpeciesDefinition => ({ formula, charge, hydrogen, water: 0, activity, formation });

const withMetal = (
  formula: string,
  cation: CationName,
  charge: number,
  hydrogen: number,
  ...formation: readonly EquilibriumConstant[]
): SpeciesDefinition => ({
  formula,
  charge,
  hydrogen,
  water: 0,
  cation,
  activity: charge === 0 ? neutral() : davies,
  formation,
});

export const hydrogenIon = alone("H+", 1, ionOfSize(9));

export const hydroxide: SpeciesDefinition = {
  formula: "OH-",
  charge: -1,
  hydrogen: -1,
  water: 1,
  activity: ionOfSize(3.5),
  formation: [acid.waterItself],
};

export const cationFamilies: readonly FamilyDefinition<CationName>[] = [
  { component: "sodium", basisCharge: 1, species: [alone("Na+", 1, ionOfSize(4.08, 0.082))] },
  { component: "potassium", basisCharge: 1, species: [alone("K+", 1, ionOfSize(3.5, 0.015))] },
  {
    component: "calcium",
    basisCharge: 2,
    species: [
      alone("Ca+2", 2, ionOfSize(5, 0.165)),
      { ...protonated("CaOH+", 1, -1, davies, pair.calciumHydroxideIon), water: 1 },
    ],
  },
  {
    component: "magnesium",
    basisCharge: 2,
    species: [
      alone("Mg+2", 2, ionOfSize(5.5, 0.2)),
      { ...protonated("MgOH+", 1, -1, davies, pair.magnesiumHydroxideIon, acid.waterItself), water: 1 },
    ],
  },
];

export const ligandFamilies: readonly FamilyDefinition<LigandName>[] = [
  {
    component: "carbonate",
    basisCharge: -2,
    species: [
      alone("CO3-2", -2, ionOfSize(5.4)),
      protonated("HCO3-", -1, 1, ionOfSize(5.4), acid.bicarbonate),
      { ...protonated("CO2", 0, 2, neutral(0.066), acid.bicarbonate, acid.carbonicAcid), water: -1 },
      withMetal("NaHCO3", "sodium", 0, 1, acid.bicarbonate, pair.sodiumBicarbonatePair),
      withMetal("KHCO3", "potassium", 0, 1, acid.bicarbonate, pair.potassiumBicarbonatePair),
      withMetal("CaCO3", "calcium", 0, 0, pair.calciumCarbonatePair),
      withMetal("CaHCO3+", "calcium", 1, 1, acid.bicarbonate, pair.calciumBicarbonatePair),
      withMetal("MgCO3", "magnesium", 0, 0, pair.magnesiumCarbonatePair),
      withMetal("MgHCO3+", "magnesium", 1, 1, acid.bicarbonate, pair.magnesiumBicarbonatePair),
    ],
  },
  {
    component: "silicate",
    basisCharge: -2,
    species: [
      alone("H2SiO4-2", -2, ionOfSize(5.4)),
      protonated("H3SiO4-", -1, 1, ionOfSize(4), acid.hydrogenSilicate),
      protonated("H4SiO4", 0, 2, neutral(), acid.silicicAcid),
    ],
  },
  {
    component: "phosphate",
    basisCharge: -3,
    species: [
      alone("PO4-3", -3, ionOfSize(4)),
      protonated("HPO4-2", -2, 1, ionOfSize(5), acid.hydrogenPhosphate),
      protonated("H2PO4-", -1, 2, ionOfSize(5.4), acid.hydrogenPhosphate, acid.dihydrogenPhosphate),
      protonated("H3PO4", 0, 3, neutral(), acid.hydrogenPhosphate, acid.dihydrogenPhosphate, acid.phosphoricAcid),
      withMetal("NaHPO4-", "sodium", -1, 1, acid.hydrogenPhosphate, pair.alkaliHydrogenPhosphatePair),
      withMetal("KHPO4-", "potassium", -1, 1, acid.hydrogenPhosphate, pair.alkaliHydrogenPhosphatePair),
      withMetal("CaPO4-", "calcium", -1, 0, pair.calciumPhosphatePair),
      withMetal("CaHPO4", "calcium", 0, 1, acid.hydrogenPhosphate, pair.calciumHydrogenPhosphatePair),
      withMetal("MgPO4-", "magnesium", -1, 0, pair.magnesiumPhosphatePair),
      withMetal("MgHPO4", "magnesium", 0, 1, acid.hydrogenPhosphate, pair.magnesiumHydrogenPhosphatePair),
    ],
  },
  {
    component: "borate",
    basisCharge: -1,
    species: [alone("B(OH)4-", -1, davies), protonated("B(OH)3", 0, 1, neutral(), acid.boricAcid)],
  },
  {
    component: "sulfate",
    basisCharge: -2,
    species: [
      alone("SO4-2", -2, ionOfSize(5, -0.04)),
      protonated("HSO4-", -1, 1, davies, acid.hydrogenSulfate),
      withMetal("NaSO4-", "sodium", -1, 0, pair.sodiumSulfatePair),
      withMetal("KSO4-", "potassium", -1, 0, pair.potassiumSulfatePair),
      withMetal("CaSO4", "calcium", 0, 0, pair.calciumSulfatePair),
      withMetal("MgSO4", "magnesium", 0, 0, pair.magnesiumSulfatePair),
    ],
  },
  {
    component: "citrate",
    basisCharge: -3,
    species: [
      alone("citrate-3", -3, ionOfSize(5)),
      protonated("Hcitrate-2", -2, 1, ionOfSize(4.5), acid.hydrogenCitrate),
      protonated("H2citrate-", -1, 2, ionOfSize(3.5), acid.hydrogenCitrate, acid.dihydrogenCitrate),
      protonated("H3citrate", 0, 3, neutral(), acid.hydrogenCitrate, acid.dihydrogenCitrate, acid.citricAcid),
      withMetal("Na citrate-2", "sodium", -2, 0, pair.sodiumCitratePair),
      withMetal("K citrate-2", "potassium", -2, 0, pair.potassiumCitratePair),
      withMetal("Ca citrate-", "calcium", -1, 0, pair.calciumCitratePair),
      withMetal("Mg citrate-", "magnesium", -1, 0, pair.magnesiumCitratePair),
    ],
  },
  {
    component: "edta",
    basisCharge: -4,
    species: [
      alone("EDTA-4", -4, ionOfSize(5)),
      protonated("HEDTA-3", -3, 1, ionOfSize(5), acid.hydrogenEdta),
      protonated("H2EDTA-2", -2, 2, ionOfSize(5), acid.hydrogenEdta, acid.dihydrogenEdta),
      protonated("H3EDTA-", -1, 3, davies, acid.hydrogenEdta, acid.dihydrogenEdta, acid.trihydrogenEdta),
      protonated(
        "H4EDTA",
        0,
        4,
        neutral(),
        acid.hydrogenEdta,
        acid.dihydrogenEdta,
        acid.trihydrogenEdta,
        acid.tetrahydrogenEdta,
      ),
      withMetal("NaEDTA-3", "sodium", -3, 0, pair.sodiumEdtaComplex),
      withMetal("KEDTA-3", "potassium", -3, 0, pair.potassiumEdtaComplex),
      withMetal("CaEDTA-2", "calcium", -2, 0, pair.calciumEdtaComplex),
      withMetal("MgEDTA-2", "magnesium", -2, 0, pair.magnesiumEdtaComplex),
    ],
  },
  {
    component: "monoethanolamine",
    basisCharge: 0,
    species: [
      alone("ethanolamine", 0, neutral()),
      protonated("ethanolammonium+", 1, 1, ionOfSize(4), acid.ethanolammonium),
    ],
  },
  {
    component: "acetate",
    basisCharge: -1,
    species: [alone("acetate-", -1, ionOfSize(4.5)), protonated("acetic acid", 0, 1, neutral(), acid.aceticAcid)],
  },
];
