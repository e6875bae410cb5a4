import type { Reference } from "../reference/reference.ts";
import { practiceWithModel } from "../top-up/top-up-working.ts";

export const triggerCardReference: Reference = {
  symbols: ["T = B − d", 'T_i ≈ T + pK_w(t_i) − pK_w(t_1) "   for plain hydroxide"'],
  where: {
    T: "trigger at the baseline's temperature",
    B: "baseline",
    d: "drop",
    T_i: "trigger at each temperature",
    t_1: "baseline_temperature",
    t_i: "each of the temperatures",
    pK_w: "ionization of water",
  },
  source: practiceWithModel,
  cautions: [],
};
