import type { Reference } from "../reference/reference.ts";
import { massBalance } from "../reference/sources.ts";

export const blendShareReference: Reference = {
  symbols: ["x = {a − t}/{a − b}"],
  where: { x: "share of water b", a: "value of water a", b: "value of water b", t: "target" },
  source: massBalance,
  cautions: [],
};
