import type { Reference } from "../reference/reference.ts";

export const meterFixReference: Reference = {
  symbols: ["pH = B_1 + (r − r_1) · {B_2 − B_1}/{r_2 − r_1}"],
  where: {
    r: "reading",
    B_1: "pH of buffer 1",
    r_1: "what the meter read in it",
    B_2: "pH of buffer 2",
    r_2: "what it read in that",
  },
  source: "Straight line through two points",
  cautions: [],
};
