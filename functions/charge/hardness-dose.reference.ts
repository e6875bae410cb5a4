import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { massBalance } from "../reference/sources.ts";

export const hardnessDoseReference: Reference = {
  symbols: ["v = {V · (H − H_0)}/{k}"],
  where: {
    v: "extra concentrate",
    V: "volume",
    H: "hardness",
    H_0: "hardness that the label allows for",
    k: "capacity, CaCO3 per volume of concentrate",
  },
  source: massBalance,
  cautions: chargeCautions,
};
