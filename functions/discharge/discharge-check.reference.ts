import { releaseCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const dischargeCheckReference: Reference = {
  symbols: ["p_1 ≤ pH ≤ p_2"],
  where: { p_1: "low", p_2: "high: the shop's own limits" },
  source: "Limits of the permit; the federal floor of pH 5.0 is 40 CFR 403.5(b)(2)",
  cautions: releaseCautions,
};
