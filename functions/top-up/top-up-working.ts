import type { Working } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";

/** What the estimates of a top-up from pH have in common. */
export const topUpWorking: Working = {
  symbols: [
    "f(v_0, 0) = B",
    'f(v_0, l) = r "   fixes l"',
    "f(v_0 + v, l) = B",
    'v ≈ v_0 · (1 − 10^{r − B}) "   for plain hydroxide"',
  ],
  where: {
    v: "top-up",
    v_0: "opening dose",
    r: "reading",
    B: "baseline",
    f: "pH of builder and water at equilibrium",
    l: "what the bath lost: to acid, dilution or carbon dioxide",
  },
};

export const practice = "Common practice, no source";

export const practiceWithModel = `${practice}; at another temperature: ${equilibriumSource}`;
