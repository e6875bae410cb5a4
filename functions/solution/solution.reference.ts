import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";
import { balances } from "./balances.ts";

export const solutionReference: Reference = {
  symbols: [...balances.symbols, "β = {d C_b}/{d pH}", "SI = log_10({IAP}/{K_s})"],
  where: {
    ...balances.where,
    β: "buffer intensity",
    C_b: "strong base added",
    SI: "saturation index",
    IAP: "ion activity product",
    K_s: "solubility product",
  },
  source: equilibriumSource,
  cautions: [],
};
