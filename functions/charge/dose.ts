import { dose as concentrateFor } from "../../src/core/bath/dose.ts";
import { checkStrength } from "../../src/core/bath/label-limit.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { labelHighest, rate } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";

export const dose = defineFunction({
  id: "DOSE",
  category: "Charge",
  summary: "Concentrate to measure out for a finished bath of a given volume and strength.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the finished bath, concentrate included" }),
    rate,
    labelHighest,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "concentrate, in the volume unit of the system",
  },
  examples: [
    {
      formula: '=BATH.DOSE(29,"1+28")',
      cells: [29, "1+28"],
      result: 1,
      tolerance: 1e-12,
      source: "by definition: 1 part of concentrate in 29 parts of finished bath",
    },
    {
      formula: '=BATH.DOSE("1 gal","1 in 40")',
      cells: ["1 gal", "1 in 40"],
      result: 0.025,
      tolerance: 1e-12,
      source: "by definition: 1/40 of a gallon (2.5 % by volume)",
    },
  ],
  notes: [
    "Does not know the water, the soil or, unless label_highest is given, the label: its highest rate wins.",
    "A ratio typed into a cell as 1:40 is turned into a time of day by Excel; such a time is refused, except those of 1:12, 1:48 and 1:84, which cannot be told from 5, 7.5 and 10 %. A bare share of more than 0.1 is refused: write 0.5% or 50%. Type 1+40 as text.",
    "Volumes are added as if nothing shrank on mixing.",
  ],
  source: "Volume × strength. 1+N is 1/(N + 1) of the finished bath; 1 in N is 1/N.",
  compute: ([volume, strength, highest], call) => {
    checkStrength(strength, highest, "Rate");
    return inSystem("volume", concentrateFor(volume, strength), call);
  },
});
