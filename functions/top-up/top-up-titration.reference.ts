import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const topUpTitrationReference: Reference = {
  symbols: ["v = v_0 · {t_0 − t}/{t_0 − b}"],
  where: { v: "top-up", v_0: "opening dose", t_0: "fresh_titer", t: "titer_now", b: "blank" },
  source: "Proportion; a titration counts the alkali itself",
  cautions: topUpCautions,
};
