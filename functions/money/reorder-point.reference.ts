import type { Reference } from "../reference/reference.ts";

export const reorderPointReference: Reference = {
  symbols: ["R = u · L + S"],
  where: { R: "stock at which to order", u: "daily_use", L: "lead_days", S: "safety" },
  source: "By definition: use during the lead time and a safety stock",
  cautions: [],
};
