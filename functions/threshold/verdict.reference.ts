import type { Reference } from "../reference/reference.ts";
import { practiceWithModel } from "../top-up/top-up-working.ts";

export const verdictReference: Reference = {
  symbols: ['r ≤ T "   top up"', 'T < r ≤ T + 0.1 "   near"', 'r > T + 0.1 "   hold"'],
  where: { r: "reading", T: "trigger, as TRIGGER gives it, lowest and highest" },
  source: practiceWithModel,
  cautions: [],
};
