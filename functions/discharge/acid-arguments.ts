import { acidNames } from "../../src/core/bath/model/acid.ts";
import type { AcidAmount } from "../../src/core/discharge/acid-amount.ts";
import { requiredChemical } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import type { CallContext } from "../define-function.ts";

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

/** Dry acid is weighed, liquid acid measured. */
export function acidInSystem(amount: AcidAmount, call: CallContext): number {
  return amount.form === "dry" ? inSystem("mass", amount.mass, call) : inSystem("volume", amount.volume, call);
}
