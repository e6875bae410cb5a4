import { heatCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const heatTimeReference: Reference = {
  symbols: ["h = {Q}/{P · η}"],
  where: { h: "hours", Q: "energy, as HEATENERGY gives it", P: "kilowatts", η: "efficiency" },
  source: "Heat balance of water",
  cautions: heatCautions,
};
