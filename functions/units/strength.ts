import { checkWithin } from "../../src/core/limits/domain.ts";
import { bathStrength } from "../../src/core/limits/domains.ts";
import { rate } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";

export const strength = defineFunction({
  id: "STRENGTH",
  category: "Units and strength",
  summary: "Turns any way of writing a strength into the share of concentrate in the finished bath.",
  arguments: [rate],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "share of the finished bath",
    help: "volume fraction, 0 to 1",
  },
  examples: [
    {
      formula: '=BATH.STRENGTH("1+40")',
      cells: ["1+40"],
      result: 0.02439,
      tolerance: 5e-6,
      source: "by definition: 1/41",
    },
    {
      formula: '=BATH.STRENGTH("1 in 40")',
      cells: ["1 in 40"],
      result: 0.025,
      tolerance: 1e-12,
      source: "by definition: 1/40",
    },
  ],
  notes: [
    "Labels disagree on what 1:40 means; it is read as 1+40 here. 1:8 can mean 1+8 or 1 in 8; the doses differ by 12.5 %.",
    "1 in 40 is one part in 40 of bath; 1 in 40 parts water is 1+40, and 3 oz per gallon of water is added to the gallon.",
    "A ratio typed into a cell as 1:40 is turned into a time of day by Excel; such a time is refused, except those of 1:12, 1:48 and 1:84, which cannot be told from 5, 7.5 and 10 %. A bare share of more than 0.1 is refused: write 0.5% or 50%. Type 1+40 as text.",
    "A bare gallon or fluid ounce is a US one, unless the other measure says imperial. oz alone is a fluid ounce here; in UNITCONVERT it is a weight.",
  ],
  source: "Ratios of volumes in the finished bath, by definition.",
  compute: ([fraction]) => {
    checkWithin("rate", fraction, bathStrength);
    return fraction;
  },
});
