import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";

export const nextAddReference: Reference = {
  symbols: [
    "v = min(a · {s(B) − s(r_2)}/{s(r_2) − s(r_1)}, h · v_0)",
    'r_2 − r_1 ≤ 2 · δ "   no answer"',
    'r_2 ≥ B − τ "   nothing more"',
    's(r) ∝ 10^r "   for plain hydroxide"',
  ],
  where: {
    v: "further addition",
    a: "added",
    s: "strength of builder and water that reads r at equilibrium",
    B: "baseline",
    r_1: "before",
    r_2: "after",
    h: "house_share",
    v_0: "opening dose; without it no more than a",
    δ: "meter_accuracy",
    τ: "tolerance",
  },
  source: equilibriumSource,
  cautions: topUpCautions,
};
