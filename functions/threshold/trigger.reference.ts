import type { Reference } from "../reference/reference.ts";
import { practiceWithModel } from "../top-up/top-up-working.ts";

export const triggerReference: Reference = {
  symbols: ["T = B − d", 'T_2 ≈ T + pK_w(t_2) − pK_w(t_1) "   for plain hydroxide"'],
  where: {
    T: "trigger at the baseline's temperature",
    B: "baseline",
    d: "drop",
    T_2: "trigger as read",
    t_1: "baseline_temperature",
    t_2: "reading_temperature",
    pK_w: "ionization of water",
  },
  source: practiceWithModel,
  cautions: [],
};
