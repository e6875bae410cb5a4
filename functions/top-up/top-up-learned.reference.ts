import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const topUpLearnedReference: Reference = {
  symbols: ["v = {10^B − 10^r}/{m}", 'm = median({10^{r_2} − 10^{r_1}}/{a}) "   where " |r_2 − r_1| > 2 · δ'],
  where: {
    v: "top-up",
    B: "baseline",
    r: "reading",
    m: "response to one unit",
    r_1: "before each addition",
    r_2: "after it",
    a: "its amount",
    δ: "meter_accuracy",
  },
  source: "Definition of pH; the ionization of water cancels",
  cautions: topUpCautions,
};
