import { acidNames } from "../../src/core/bath-chemistry/acid.ts";
import { inSystem } from "../in-system.ts";
import { requiredChoice } from "../arguments.ts";
import type { AcidAmount } from "../../src/core/discharge/acid-amount.ts";
import type { CallContext } from "../define-function.ts";

export const acid = requiredChoice("acid", acidNames.join(", "), acidNames);

export const acidUnit = "dry acids (citric, sodium bisulfate): lb (US), kg; liquid acids: US gal (US), L (metric), imperial gal (imperial)";

/** Dry acid is weighed, liquid acid measured. */
export function acidInSystem(amount: AcidAmount, call: CallContext): number {
  return amount.form === "dry" ? inSystem("mass", amount.mass, call) : inSystem("volume", amount.volume, call);
}
