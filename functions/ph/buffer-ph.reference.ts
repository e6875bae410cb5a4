import type { Reference } from "../reference/reference.ts";

export const bufferPhReference: Reference = {
  symbols: [],
  where: {},
  source:
    "Certified pH(S): Buck et al., Pure Appl. Chem. 74 (2002) 2169; NIST. technical 7: the table on US bottles, from memory",
  cautions: [],
};
