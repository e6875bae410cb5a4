import { blendShare as shareOf } from "../../src/core/water/blend-share.ts";
import { defineFunction } from "../define-function.ts";
import { value } from "./value-argument.ts";

export const blendShare = defineFunction({
  id: "BLENDSHARE",
  category: "Water",
  summary:
    "Share of water b in a blend of waters a and b that has the hardness, alkalinity or the like that you want. Never for pH.",
  arguments: [
    value("value_a", 'value of water a, such as city water; "0 mg/L" for none'),
    value("value_b", 'value of water b, such as reverse osmosis water; "0 mg/L" for none'),
    value("target", "value that the blend is to have, between the two"),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "share of the blend",
    help: "volume of b in the volume of the blend, 0 to 1",
  },
  examples: [
    {
      formula: "=BATH.BLENDSHARE(20,1,5)",
      cells: [20, 1, 5],
      result: 0.7895,
      tolerance: 0.0001,
      source: "mass balance: (20 − 5) / (20 − 1) of reverse osmosis water in city water of 20 gpg",
    },
  ],
  notes: [
    "All three values in one unit. #N/A where the target does not lie between the two waters.",
    "pH does not blend. A blend with the right hardness still has its own alkalinity: work that out too (BLEND).",
    "Does not know that supplies change with the season: test the blend.",
  ],
  source: "(a − target) / (a − b).",
  compute: ([a, b, target]) => shareOf(a, b, target),
});
