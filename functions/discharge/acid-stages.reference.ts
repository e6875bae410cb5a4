import { acidCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const acidStagesReference: Reference = {
  symbols: ["a_1 = 0.6 · a", "a_2 = 0.3 · a", "a_3 = a − a_1 − a_2"],
  where: { a: "amount", "a_1, a_2, a_3": "stages" },
  source: "Common practice, no source",
  cautions: acidCautions,
};
