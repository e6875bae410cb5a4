/** What the estimates of a top-up from pH share in print. */
import { equilibriumSource } from "../reference/sources.ts";

export const topUpSymbols = [
  "f(v_0, 0) = B",
  'f(v_0, l) = r "   fixes l"',
  "f(v_0 + v, l) = B",
  'v ≈ v_0 · (1 − 10^{r − B}) "   for plain hydroxide"',
];

export const topUpMeanings = {
  v: "top-up",
  v_0: "opening dose",
  r: "reading",
  B: "baseline",
  f: "pH of builder and water at equilibrium",
  l: "what the bath lost: to acid, dilution or carbon dioxide",
};

export const practice = "Common practice, no source";

const then = (source: string, what: string, other: string): string => `${source}; ${what}: ${other}`;

export const practiceWithModel: string = /* @__PURE__ */ then(practice, "at another temperature", equilibriumSource);

export const modelWithPractice: string = /* @__PURE__ */ then(
  equilibriumSource,
  "first addition",
  "common practice, no source",
);
