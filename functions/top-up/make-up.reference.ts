import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const makeUpReference: Reference = {
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
  cautions: topUpCautions,
};
