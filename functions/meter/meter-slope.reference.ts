import type { Reference } from "../reference/reference.ts";

export const meterSlopeReference: Reference = {
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
  cautions: [],
};
