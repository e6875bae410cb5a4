import type { AcidName } from "../bath/model/acid.ts";
import { acidNames, acids } from "../bath/model/acid.ts";
import { molarMass } from "../chemistry/chemicals/molar-mass.ts";
import type { Points } from "../numeric/interpolate.ts";

interface AcidProduct {
  /** kg of pure acid per equivalent. */
  readonly perEquivalent: number;
  /** Percent by weight that it is usually sold at (common practice, no source); absent where it is sold at any. */
  readonly usualPurity?: number;
  /** Density in kg/m3 over percent by weight at 20 °C; absent for what is sold dry. */
  readonly density?: Points;
}

const perEquivalent = (formula: string, name: AcidName): number =>
  molarMass(formula) / 1000 / acids[name].equivalentsPerMole;

/**
 * Densities of aqueous solutions at 20 °C: hydrochloric and sulfuric acid as in the CRC Handbook's class of tables,
 * acetic as in Perry's Handbook, which is up to 0.2 % above the other. Values from memory, most held to a public copy.
 */
const hydrochloricDensity: Points = [
  [0, 998.2],
  [10, 1047.4],
  [20, 1098.0],
  [30, 1149.3],
  [40, 1198.0],
];
const sulfuricDensity: Points = [
  [0, 998.2],
  [10, 1066.1],
  [20, 1139.4],
  [30, 1218.5],
  [40, 1302.8],
  [50, 1395.1],
  [60, 1498.3],
  [70, 1610.5],
  [80, 1727.2],
  [90, 1814.4],
  [93, 1827.9],
  [95, 1833.7],
  [98, 1836.1],
  [100, 1830.5],
];
const aceticDensity: Points = [
  [0, 998.2],
  [10, 1012.5],
  [20, 1026.3],
  [30, 1038.4],
  [40, 1048.8],
  [50, 1057.5],
  [60, 1064.2],
  [70, 1068.5],
  [80, 1070.0],
  [90, 1066.1],
  [100, 1049.8],
];

export const acidProducts: Readonly<Record<AcidName, AcidProduct>> = {
  citric: { perEquivalent: perEquivalent("C6H8O7", "citric"), usualPurity: 100 },
  "sodium bisulfate": { perEquivalent: perEquivalent("NaHSO4", "sodium bisulfate"), usualPurity: 100 },
  hydrochloric: {
    perEquivalent: perEquivalent("HCl", "hydrochloric"),
    usualPurity: 31.45,
    density: hydrochloricDensity,
  },
  sulfuric: { perEquivalent: perEquivalent("H2SO4", "sulfuric"), usualPurity: 93, density: sulfuricDensity },
  acetic: { perEquivalent: perEquivalent("CH3COOH", "acetic"), density: aceticDensity },
};

/** Weighed, where the others are measured. */
export const dryAcids: readonly AcidName[] = acidNames.filter((name) => acidProducts[name].density === undefined);
