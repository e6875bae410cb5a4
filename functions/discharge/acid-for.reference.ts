import { acidCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { acidWorking } from "./acid-working.ts";

export const acidForReference: Reference = {
  symbols: ["n = V · A", ...acidWorking.symbols],
  where: { n: "equivalents", V: "volume", A: "alkalinity, eq/L", ...acidWorking.where },
  source:
    "Stoichiometry; densities of the CRC and Perry's handbooks, sulfuric from 60 % on and some of acetic from memory",
  cautions: acidCautions,
};
