import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const jarDoseReference: Reference = {
  symbols: ["v = V · x · {d}/{d_0}"],
  where: {
    v: "concentrate",
    V: "finished bath",
    x: "label's strength",
    d: "dose that passes in this water",
    d_0: "dose that passes in the reference water",
  },
  source: "Proportion; the jar test itself is common practice, no source",
  cautions: chargeCautions,
};
