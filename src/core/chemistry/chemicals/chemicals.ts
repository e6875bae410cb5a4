import type { ComponentName } from "../composition.ts";

/** A substance that can be named as part of a solution. */
export interface Chemical {
  readonly formula: string;
  readonly name: string;
  /** Other words for it, as they stand in safety data sheets and on drums. */
  readonly spellings: readonly string[];
  /** mol of each component in one mol. */
  readonly parts: Readonly<Partial<Record<ComponentName, number>>>;
  /** Formula with crystal water, for weight; absent where it is `formula`. */
  readonly weighedAs?: string;
}

const chemical = (
  formula: string,
  name: string,
  parts: Chemical["parts"],
  spellings: readonly string[] = [],
  weighedAs?: string,
): Chemical => ({ formula, name, spellings, parts, ...(weighedAs === undefined ? {} : { weighedAs }) });

export const chemicals: readonly Chemical[] = [
  chemical("NaOH", "sodium hydroxide", { sodium: 1 }, ["caustic soda", "lye"]),
  chemical("KOH", "potassium hydroxide", { potassium: 1 }, ["caustic potash"]),
  chemical("Ca(OH)2", "calcium hydroxide", { calcium: 1 }, ["slaked lime"]),
  chemical("Mg(OH)2", "magnesium hydroxide", { magnesium: 1 }),
  chemical("HCl", "hydrochloric acid", { chloride: 1 }, ["hydrogen chloride", "muriatic acid"]),
  chemical("H2SO4", "sulfuric acid", { sulfate: 1 }, ["sulphuric acid"]),
  chemical("NaHSO4", "sodium bisulfate", { sodium: 1, sulfate: 1 }, ["sodium hydrogen sulfate", "sodium bisulphate"]),
  chemical("CO2", "carbon dioxide", { carbonate: 1 }),
  chemical("NaHCO3", "sodium bicarbonate", { sodium: 1, carbonate: 1 }, ["sodium hydrogen carbonate", "baking soda"]),
  chemical("Na2CO3", "sodium carbonate", { sodium: 2, carbonate: 1 }, ["soda ash", "washing soda"]),
  chemical("K2CO3", "potassium carbonate", { potassium: 2, carbonate: 1 }, ["potash"]),
  chemical("SiO2", "silicon dioxide", { silicate: 1 }, ["silica"]),
  chemical("Na2SiO3", "sodium metasilicate", { sodium: 2, silicate: 1 }, [
    "disodium metasilicate",
    "disodium trioxosilicate",
  ]),
  chemical("Na2SiO3·5H2O", "sodium metasilicate pentahydrate", { sodium: 2, silicate: 1 }, [], "Na2SiO3(H2O)5"),
  chemical("H3PO4", "phosphoric acid", { phosphate: 1 }),
  chemical("Na3PO4", "trisodium phosphate", { sodium: 3, phosphate: 1 }, ["sodium phosphate tribasic", "TSP"]),
  chemical("Na3PO4·12H2O", "trisodium phosphate dodecahydrate", { sodium: 3, phosphate: 1 }, [], "Na3PO4(H2O)12"),
  chemical("Na2HPO4", "disodium phosphate", { sodium: 2, phosphate: 1 }, ["disodium hydrogen phosphate"]),
  chemical("NaH2PO4", "monosodium phosphate", { sodium: 1, phosphate: 1 }, ["sodium dihydrogen phosphate"]),
  chemical("H3BO3", "boric acid", { borate: 1 }),
  chemical("Na2B4O7", "sodium tetraborate", { sodium: 2, borate: 4 }, ["disodium tetraborate"]),
  chemical("Na2B4O7·10H2O", "borax", { sodium: 2, borate: 4 }, ["sodium tetraborate decahydrate"], "Na2B4O7(H2O)10"),
  chemical("C6H8O7", "citric acid", { citrate: 1 }),
  chemical("Na3C6H5O7", "trisodium citrate", { sodium: 3, citrate: 1 }, ["sodium citrate"]),
  chemical("H4EDTA", "EDTA acid", { edta: 1 }, ["edetic acid", "ethylenediaminetetraacetic acid"], "C10H16N2O8"),
  chemical(
    "Na4EDTA",
    "tetrasodium EDTA",
    { sodium: 4, edta: 1 },
    ["tetrasodium ethylenediaminetetraacetate"],
    "Na4C10H12N2O8",
  ),
  chemical("C2H7NO", "monoethanolamine", { monoethanolamine: 1 }, ["MEA", "ethanolamine", "2-aminoethanol"]),
  chemical("CH3COOH", "acetic acid", { acetate: 1 }),
  chemical("NaCl", "sodium chloride", { sodium: 1, chloride: 1 }),
  chemical("KCl", "potassium chloride", { potassium: 1, chloride: 1 }),
  chemical("CaCl2", "calcium chloride", { calcium: 1, chloride: 2 }),
  chemical("MgCl2", "magnesium chloride", { magnesium: 1, chloride: 2 }),
  chemical("Na2SO4", "sodium sulfate", { sodium: 2, sulfate: 1 }, ["sodium sulphate"]),
];
