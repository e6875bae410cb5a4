import type { Formula } from "./formula.ts";
import { equilibriumSource } from "./formulas-of-charge.ts";

const practice = "Common practice, no source";
const practiceOn = `${practice}; at another temperature: ${equilibriumSource}`;

const topUp = {
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
} as const;

export const formulasOfTopUp: Readonly<Record<string, Formula>> = {
  TRIGGER: {
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
    source: practiceOn,
  },
  TRIGGERCARD: {
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
    source: practiceOn,
  },
  VERDICT: {
    symbols: ['r ≤ T "   top up"', 'T < r ≤ T + 0.1 "   near"', 'r > T + 0.1 "   hold"'],
    where: { r: "reading", T: "trigger, as TRIGGER gives it, lowest and highest" },
    source: practiceOn,
  },
  TOPUP: { ...topUp, source: equilibriumSource },
  TOPUPRANGE: {
    symbols: [...topUp.symbols, "a = min(v, h · v_0)"],
    where: { ...topUp.where, a: "first addition", h: "house_share" },
    source: `${equilibriumSource}; first addition: common practice, no source`,
  },
  TOPUPTABLE: { ...topUp, source: equilibriumSource },
  NEXTADD: {
    symbols: [
      "v = a · {s(B) − s(r_2)}/{s(r_2) − s(r_1)}",
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
      τ: "tolerance",
    },
    source: equilibriumSource,
  },
  RECOVERED: {
    symbols: ['|r − B| ≤ τ "   recovered"', 'r < B − τ "   short"', 'r > B + τ "   over"'],
    where: { r: "after", B: "baseline", τ: "tolerance" },
    source: practice,
  },
  TOPUPLEARNED: {
    symbols: ["v = {10^B − 10^r}/{m}", "m = median({10^{r_2} − 10^{r_1}}/{a})"],
    where: {
      v: "top-up",
      B: "baseline",
      r: "reading",
      m: "response to one unit",
      r_1: "before each addition",
      r_2: "after it",
      a: "its amount",
    },
    source: "Definition of pH; the ionization of water cancels",
  },
  TOPUPTITRATION: {
    symbols: ["v = v_0 · {t_0 − t}/{t_0 − b}"],
    where: { v: "top-up", v_0: "opening dose", t_0: "fresh_titre", t: "titre_now", b: "blank" },
    source: "Proportion; a titration counts the alkali itself",
  },
  DRAGOUT: {
    symbols: ["x = (1 − {w}/{V})^n"],
    where: {
      x: "fraction of strength left",
      w: "solution carried out per load",
      V: "volume, kept constant with water",
      n: "loads",
    },
    source: "Mass balance of a bath refilled after each load",
  },
  MAKEUP: {
    symbols: ["o = n · w + D", "e = L − o", "v = o · x"],
    where: {
      o: "dragged out and drained",
      n: "loads",
      w: "drag-out per load",
      D: "drained",
      e: "evaporated",
      L: "loss of level",
      v: "concentrate to add",
      x: "strength",
    },
    source: "Mass balance: evaporation takes water, drag-out and draining take solution",
  },
  PHTREND: {
    symbols: ["m = median({y_j − y_i}/{t_j − t_i}),  t_j > t_i"],
    where: { m: "slope per unit of time", y: "readings", t: "times" },
    source:
      "Helsel et al., Statistical Methods in Water Resources, USGS TM4-A3, chapter 10; after Theil (1950) and Sen, J. Am. Stat. Assoc. 63 (1968) 1379, from memory",
  },
  TIMELEFT: {
    symbols: ["τ = {y_n − T}/{|m|}"],
    where: { τ: "time left from the last reading", y_n: "last reading", T: "trigger", m: "slope, as PHTREND gives it" },
    source: "Straight line through the last reading with the slope of Theil and Sen",
  },
};
