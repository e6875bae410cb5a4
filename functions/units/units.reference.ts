import type { Reference } from "../reference/reference.ts";

export const unitsReference: Reference = {
  symbols: [],
  where: {},
  source: "Exact definitions, named in the last column of the table",
  cautions: [],
};
