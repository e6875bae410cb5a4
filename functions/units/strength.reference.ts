import type { Reference } from "../reference/reference.ts";
import { byDefinition } from "../reference/sources.ts";

export const strengthReference: Reference = {
  symbols: [
    'x = {1}/{N + 1} "   for 1+N"',
    'x = {1}/{N} "   for 1 in N"',
    'x = {q}/{g} "   for q per g of finished bath"',
    'x = {q}/{g + q} "   for q added to g of water"',
  ],
  where: {
    x: "share of concentrate in the finished bath",
    N: "number on the label",
    q: "concentrate",
    g: "bath or water, in the unit of q",
  },
  source: byDefinition,
  cautions: [],
};
