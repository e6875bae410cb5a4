import type { Composition } from "../../chemistry/composition.ts";
import { composition } from "../../chemistry/composition.ts";

export const acidNames = ["citric", "sodium bisulfate", "hydrochloric", "sulfuric", "acetic"] as const;

export type AcidName = (typeof acidNames)[number];

/** An acid for neutralizing: what a mol of it dissolves to, and the equivalents it is sold by. */
export interface Acid {
  readonly parts: Composition;
  readonly equivalentsPerMole: number;
}

export const acids: Readonly<Record<AcidName, Acid>> = {
  citric: { parts: composition({ citrate: 1 }), equivalentsPerMole: 3 },
  "sodium bisulfate": { parts: composition({ sodium: 1, sulfate: 1 }), equivalentsPerMole: 1 },
  hydrochloric: { parts: composition({ chloride: 1 }), equivalentsPerMole: 1 },
  sulfuric: { parts: composition({ sulfate: 1 }), equivalentsPerMole: 2 },
  acetic: { parts: composition({ acetate: 1 }), equivalentsPerMole: 1 },
};
