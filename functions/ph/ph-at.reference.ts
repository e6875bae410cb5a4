import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";

export const phAtReference: Reference = {
  symbols: [
    "pH_2 = f(s, t_2)",
    'f(s, t_1) = pH_1 "   fixes s"',
    'pH_2 ≈ pH_1 + pK_w(t_2) − pK_w(t_1) "   for plain hydroxide"',
  ],
  where: {
    f: "pH of builder and water at equilibrium",
    s: "strength of the bath",
    t_1: "from_temperature",
    t_2: "to_temperature",
    pK_w: "ionization of water",
  },
  source: equilibriumSource,
  cautions: [],
};
