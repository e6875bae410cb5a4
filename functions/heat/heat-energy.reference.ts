import { heatCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const heatEnergyReference: Reference = {
  symbols: ["Q = V · ρ · c · (t_2 − t_1)"],
  where: { Q: "energy", V: "volume", ρ: "density of water", c: "its specific heat", t_1: "from", t_2: "to" },
  source: "Heat balance of water without losses; 3600 kJ to the kWh by definition",
  cautions: heatCautions,
};
