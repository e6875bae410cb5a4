import { acidNames } from "../../src/core/bath/model/acid.ts";
import type { AcidAmount } from "../../src/core/discharge/acid-amount.ts";
import { requiredChemical } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { isBlankOrZero, numberFrom, singleCell } from "../arguments/read-cell.ts";
import type { Argument, CallContext } from "../define-function.ts";

/** Drums name them in full, and hydrochloric acid by its older name. */
const alsoRead = {
  ...Object.fromEntries(acidNames.map((name) => [`${name} acid`, name])),
  bisulfate: "sodium bisulfate",
  muriatic: "hydrochloric",
  "muriatic acid": "hydrochloric",
} as const;

export const acid = requiredChemical("acid", acidNames.join(", "), acidNames, alsoRead);

export const acidUnit =
  "dry acids (citric, sodium bisulfate): lb (US), kg; liquid acids: US gal (US), L (metric), imperial gal (imperial)";

export const purity: Argument<number | undefined, "purity"> = {
  name: "purity",
  help: "acid in the product, % by weight (31.45, not 0.3145); left out: dry acids 100, hydrochloric 31.45, sulfuric 93. Acetic must say: vinegar is about 5, glacial 100",
  unit: "% by weight",
  excelType: "any",
  dimensionality: "scalar",
  optional: true,
  read: (input) => {
    const cell = singleCell("purity", input);
    if (isBlankOrZero(cell)) return undefined;
    return numberFrom("purity", typeof cell === "string" ? cell.replace(/%\s*$/, "") : cell);
  },
};

/** Dry acid is weighed, liquid acid measured. */
export function acidInSystem(amount: AcidAmount, call: CallContext): number {
  return amount.form === "dry" ? inSystem("mass", amount.mass, call) : inSystem("volume", amount.volume, call);
}
