import type { Reference } from "../reference/reference.ts";
import { practice } from "./top-up-working.ts";

export const recoveredReference: Reference = {
  symbols: ['|r − B| ≤ τ "   recovered"', 'r < B − τ "   short"', 'r > B + τ "   over"'],
  where: { r: "after", B: "baseline", τ: "tolerance" },
  source: practice,
  cautions: [],
};
