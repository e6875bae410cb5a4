import type { Reference } from "../reference/reference.ts";

export const lsiReference: Reference = {
  symbols: [
    "LSI = pH − pH_s",
    "pH_s = (9.3 + A + B) − (C + D)",
    "A = {log_10(S) − 1}/{10}",
    "B = 34.55 − 13.12 · log_10(t + 273.15)",
    "C = log_10(H) − 0.4",
    "D = log_10(M)",
  ],
  where: {
    pH_s: "pH of the same water when saturated",
    S: "total dissolved solids, mg/L",
    t: "temperature, °C",
    H: "calcium hardness, mg/L as CaCO3",
    M: "total alkalinity, mg/L as CaCO3",
  },
  source: "Carrier form of Langelier's index as widely reprinted; method family of Standard Methods 2330",
  cautions: [],
};
