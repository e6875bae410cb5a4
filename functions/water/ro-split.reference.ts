import type { Reference } from "../reference/reference.ts";
import { massBalance } from "../reference/sources.ts";

export const roSplitReference: Reference = {
  symbols: ["c_p = c_f · (1 − R)", "c_r = {c_f − Y · c_p}/{1 − Y}", "q = {1}/{Y}"],
  where: {
    c_p: "value of the permeate",
    c_f: "value of the feed",
    R: "rejection",
    c_r: "value of the reject water",
    Y: "recovery",
    q: "feed volume per permeate volume",
  },
  source: massBalance,
  cautions: [],
};
