import type { Reference } from "../reference/reference.ts";
import { byDefinition } from "../reference/sources.ts";

export const strengthOfReference: Reference = {
  symbols: ["x = {v}/{V}", 'N = {1}/{x} − 1 "   as parts"'],
  where: { x: "strength as a fraction", v: "dose", V: "finished bath", N: "parts of water in 1+N" },
  source: byDefinition,
  cautions: [],
};
