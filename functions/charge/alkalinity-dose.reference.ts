import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";

export const alkalinityDoseReference: Reference = {
  symbols: ["v = {V · A}/{S}"],
  where: { v: "extra concentrate", V: "volume", A: "alkalinity, eq/L", S: "strength of the concentrate, eq/L" },
  source: "HCO3⁻ + OH⁻ → CO3²⁻ + H2O: one equivalent takes one",
  cautions: chargeCautions,
};
