import { acidCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";
import { acidWorking } from "./acid-working.ts";

export const acidToReference: Reference = {
  symbols: ['f(s, 0) = pH_1,  f(s, n) = pH_2 "   per volume"', ...acidWorking.symbols],
  where: {
    f: "pH of bath and acid at equilibrium",
    s: "builder in the bath",
    pH_1: "pH now",
    pH_2: "target",
    n: "equivalents of acid",
    ...acidWorking.where,
  },
  source: equilibriumSource,
  cautions: acidCautions,
};
