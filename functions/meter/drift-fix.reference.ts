import type { Reference } from "../reference/reference.ts";

export const driftFixReference: Reference = {
  symbols: ["pH = r − e · {t − t_0}/{t_1 − t_0}"],
  where: {
    r: "reading",
    t: "when it was taken",
    t_0: "adjustment before it",
    t_1: "next check",
    e: "as-found error at that check",
  },
  source: "Drift taken as linear in time; common practice, no source",
  cautions: [],
};
