import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { byDefinition } from "../reference/sources.ts";

export const doseReference: Reference = {
  symbols: ["v = V · x"],
  where: { v: "concentrate", V: "finished bath", x: "strength, as STRENGTH gives it" },
  source: byDefinition,
  cautions: chargeCautions,
};
