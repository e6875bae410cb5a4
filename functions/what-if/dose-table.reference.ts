import { chargeCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { byDefinition } from "../reference/sources.ts";

export const doseTableReference: Reference = {
  symbols: ["v_{ij} = V_i · x_j"],
  where: { "v_{ij}": "concentrate in row i, column j", V_i: "volume of the row", x_j: "strength of the column" },
  source: byDefinition,
  cautions: chargeCautions,
};
