import type { Formula } from "./formula.ts";
import { equilibriumSource } from "./formulas-of-charge.ts";

const balances = {
  symbols: [
    "Σ z_i · m_i = 0",
    "Σ ν_{ij} · m_i = M_j",
    "K = Π a_i^{ν_i},  a_i = γ_i · m_i",
    "log_10(γ_i) = −{A · z_i^2 · √I}/{1 + B · å_i · √I} + b_i · I",
  ],
  where: {
    z_i: "charge of a dissolved species",
    m_i: "its molality",
    M_j: "total of a component, as given",
    "ν_{ij}": "how often the species holds it",
    K: "constant of each reaction at the temperature",
    γ_i: "activity coefficient",
    I: "ionic strength",
  },
} as const;

export const formulasOfPh: Readonly<Record<string, Formula>> = {
  PHAT: {
    symbols: [
      "pH_2 = f(s, t_2)",
      'f(s, t_1) = pH_1 "   fixes s"',
      'pH_2 ≈ pH_1 + pK_w(t_2) − pK_w(t_1) "   for plain hydroxide"',
    ],
    where: {
      f: "pH of builder and water at equilibrium",
      s: "strength of the bath",
      t_1: "from_temperature",
      t_2: "to_temperature",
      pK_w: "ionization of water",
    },
    source: equilibriumSource,
  },
  BUFFERPH: { symbols: [], where: {}, source: "Certified pH(S): Buck et al., Pure Appl. Chem. 74 (2002) 2169; NIST" },
  METERSLOPE: {
    symbols: ["S = 100 · {|E_1 − E_2|}/{k · |B_1 − B_2|}", "k = {ln(10) · R · T}/{F}"],
    where: {
      S: "slope, % of Nernst",
      E_1: "mV in buffer 1",
      E_2: "mV in buffer 2",
      B_1: "pH of buffer 1",
      B_2: "pH of buffer 2",
      k: "59.16 mV at 25 °C",
      T: "temperature, K",
      R: "gas constant",
      F: "Faraday constant",
    },
    source: "Nernst equation; constants of the SI, exact since 2019",
  },
  METERFIX: {
    symbols: ["pH = B_1 + (r − r_1) · {B_2 − B_1}/{r_2 − r_1}"],
    where: {
      r: "reading",
      B_1: "pH of buffer 1",
      r_1: "what the meter read in it",
      B_2: "pH of buffer 2",
      r_2: "what it read in that",
    },
    source: "Straight line through two points",
  },
  DRIFTFIX: {
    symbols: ["pH = r − e · {t − t_0}/{t_1 − t_0}"],
    where: {
      r: "reading",
      t: "when it was taken",
      t_0: "adjustment before it",
      t_1: "next check",
      e: "as-found error at that check",
    },
    source: "Drift taken as linear in time; common practice, no source",
  },
  SOLUTIONPH: { ...balances, source: equilibriumSource },
  SOLUTION: {
    symbols: [...balances.symbols, "β = {d C_b}/{d pH}", "SI = log_10({IAP}/{K_s})"],
    where: {
      ...balances.where,
      β: "buffer intensity",
      C_b: "strong base added",
      SI: "saturation index",
      IAP: "ion activity product",
      K_s: "solubility product",
    },
    source: equilibriumSource,
  },
};
