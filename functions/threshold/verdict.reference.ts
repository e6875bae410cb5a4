import type { Reference } from "../reference/reference.ts";
import { practiceWithModel } from "../top-up/top-up-working.ts";

export const verdictReference: Reference = {
  symbols: [
    'r ≤ T "   top up"',
    'T < r ≤ T + 0.1 "   near"',
    'T + 0.1 < r ≤ B + 0.05 "   hold"',
    'r > B + 0.05 "   above baseline"',
  ],
  where: {
    r: "reading",
    T: "trigger, as TRIGGER gives it, lowest and highest",
    B: "baseline at the reading's temperature, highest",
  },
  source: practiceWithModel,
  cautions: [],
};
