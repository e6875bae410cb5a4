import type { Working } from "../reference/reference.ts";

/** What holds in every solution at equilibrium. */
export const balances: Working = {
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
};
