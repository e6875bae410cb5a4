import { releaseCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const corrosiveReference: Reference = {
  symbols: ['pH ≤ 2 "  or  " pH ≥ 12.5', 'pH < 2 + m "  or  " pH > 12.5 − m'],
  where: { m: "margin" },
  source: "40 CFR 261.22(a)(1); the margin is common practice, no source",
  cautions: releaseCautions,
};
