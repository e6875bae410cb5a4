import { alkalinitySplit as splitOf } from "../../src/core/water/alkalinity-split.ts";
import { inUnit } from "../arguments/in-system.ts";
import { quantityOrNone, quantityOrWrittenZero } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";

export const alkalinitySplit = defineFunction({
  id: "ALKALINITYSPLIT",
  category: "Water",
  summary:
    "Returns hydroxide, carbonate and bicarbonate from the alkalinity to pH 8.3 (P) and to pH 4.5 (T, the total).",
  arguments: [
    quantityOrNone("p", {
      kind: "alkalinity",
      anyUnit: true,
      help: "alkalinity to pH 8.3 (P); 0 where the sample is at or below 8.3",
    }),
    quantityOrWrittenZero("total", {
      kind: "alkalinity",
      anyUnit: true,
      help: "alkalinity to pH 4.5 (total, T or M) of the same sample",
    }),
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "mg/L as CaCO3",
    help: "one row: hydroxide, carbonate, bicarbonate; they add up to the total",
  },
  examples: [
    {
      formula: "=BATH.ALKALINITYSPLIT(50,80)",
      cells: [50, 80],
      result: [[20, 60, 0]],
      tolerance: 1e-9,
      source: "Standard Methods 2320 B, table of relationships: 2P − T, 2(T − P), 0; example as reprinted",
    },
    {
      formula: "=BATH.ALKALINITYSPLIT(0,240)",
      cells: [0, 240],
      result: [[0, 0, 240]],
      tolerance: 1e-9,
      source: "the same table: with P = 0 all is bicarbonate",
    },
  ],
  notes: [
    "A blank P is refused, so that a P not titrated is not read as none; where a build of Excel hands a blank cell over as 0, it counts as none: see that P was titrated.",
    "For water. In a bath, silicate, phosphate, amine and soap are counted as hydroxide or carbonate: follow the trend, not the three figures.",
    "Takes it that hydroxide and bicarbonate exclude each other, as the table does.",
  ],
  source:
    "Standard Methods 2320 B: P = 0: 0, 0, T. P < T/2: 0, 2P, T − 2P. P = T/2: 0, 2P, 0. P > T/2: 2P − T, 2(T − P), 0. P = T: T, 0, 0.",
  compute: ([p, total]) => {
    const { hydroxide, carbonate, bicarbonate } = splitOf(p, total);
    return [[hydroxide, carbonate, bicarbonate].map((part) => inUnit("alkalinity", part, "mg/L CaCO3"))];
  },
});
