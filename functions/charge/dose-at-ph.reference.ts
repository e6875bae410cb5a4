import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";

export const doseAtPhReference: Reference = {
  symbols: ["v_2 = v_1 · {s_2}/{s_1}", "f(s_1) = pH_1,  f(s_2) = pH_2"],
  where: {
    v_1: "known dose",
    v_2: "dose for the target",
    f: "pH of builder and water at equilibrium",
    s_1: "strength at the known pH",
    s_2: "strength at the target",
  },
  source: equilibriumSource,
  cautions: chargeCautions,
};
