import type { Reference } from "../reference/reference.ts";
import { massBalance } from "../reference/sources.ts";

export const blendReference: Reference = {
  symbols: ["c = {Σ c_i · V_i}/{Σ V_i}"],
  where: { c: "value of the blend", c_i: "value of each water", V_i: "its volume" },
  source: massBalance,
  cautions: [],
};
