import { alkaliCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const alkalinityReference: Reference = {
  symbols: ["A = {V_t · N}/{V_s} · 50,043"],
  where: {
    A: "alkalinity, mg/L as CaCO3",
    V_t: "titrant to the end point",
    N: "strength of the acid, eq/L",
    V_s: "sample, in the unit of the titrant",
    "50,043": "mg of CaCO3 per equivalent",
  },
  source: "Standard Methods 2320 B",
  cautions: alkaliCautions,
};
