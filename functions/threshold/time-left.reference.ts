import type { Reference } from "../reference/reference.ts";

export const timeLeftReference: Reference = {
  symbols: ["τ = {y_n − T}/{|m|}"],
  where: { τ: "time left from the last reading", y_n: "last reading", T: "trigger", m: "slope, as PHTREND gives it" },
  source: "Straight line through the last reading with the slope of Theil and Sen",
  cautions: [],
};
