import { blend as blendOf } from "../../src/core/water/blend.ts";
import { defineFunction } from "../define-function.ts";
import { volumes, watersOf } from "./blended-waters.ts";
import { valueList } from "./value-argument.ts";

export const blend = defineFunction({
  id: "BLEND",
  category: "Water",
  summary:
    "Hardness, alkalinity, dissolved solids or the like of mixed waters: the volume-weighted mean. Never for pH.",
  arguments: [
    valueList(
      "values",
      'one column or row of values; rows with both cells blank and a header on top are skipped; "0 mg/L" for none',
    ),
    volumes,
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "unit of the values", help: "value of the blend" },
  examples: [
    {
      formula: "=BATH.BLEND({20;1},{4;15})",
      cells: [
        [[20], [1]],
        [[4], [15]],
      ],
      result: 5,
      tolerance: 1e-9,
      source: "mass balance: 15 parts of reverse osmosis water in 19 (0.7895) bring city water of 20 gpg to 5",
    },
  ],
  notes: [
    "pH does not blend: it is a logarithm, and waters react. Use SOLUTIONPH with what is dissolved.",
    "For what mixing neither makes nor destroys. Hardness that settles as scale, or carbon dioxide that leaves, is not known. Conductivity blends only roughly.",
    "A value without a volume, or the reverse, is refused with its place: a blank is not 0.",
  ],
  source: "Sum of value × volume / sum of volumes.",
  compute: ([values, given]) => blendOf(watersOf(values, given)),
});
