import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";

export const phAtDoseReference: Reference = {
  symbols: [
    "pH_2 = f(s · {v_2}/{v_1})",
    'f(s) = pH_1 "   fixes s"',
    'pH_2 ≈ pH_1 + log_10({v_2}/{v_1}) "   for plain hydroxide"',
  ],
  where: {
    f: "pH of builder and water at equilibrium",
    s: "strength of the bath",
    v_1: "known dose",
    v_2: "new dose",
    pH_1: "known pH",
  },
  source: equilibriumSource,
  cautions: chargeCautions,
};
