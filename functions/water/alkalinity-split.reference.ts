import type { Reference } from "../reference/reference.ts";

export const alkalinitySplitReference: Reference = {
  symbols: ["h = max(0, 2 · P − T)", "c = 2 · min(P, T − P)", "b = max(0, T − 2 · P)"],
  where: { h: "hydroxide", c: "carbonate", b: "bicarbonate", P: "alkalinity to pH 8.3", T: "total, to pH 4.5" },
  source: "Standard Methods 2320 B, table of relationships, its five lines in one",
  cautions: [],
};
