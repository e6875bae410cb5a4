import type { Reference } from "../reference/reference.ts";

export const hardnessReference: Reference = {
  symbols: ["H = 100.0869 · ({Ca}/{40.078} + {Mg}/{24.305})"],
  where: { H: "total hardness, mg/L as CaCO3", Ca: "calcium, mg/L", Mg: "magnesium, mg/L" },
  source: "Standard Methods 2340 B, as reprinted; atomic weights of IUPAC, from memory",
  cautions: [],
};
