import { jarDose as doseFor, jarStrength } from "../../src/core/bath/jar-dose.ts";
import { checkStrength } from "../../src/core/bath/label-limit.ts";
import { positiveNumber, system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { labelHighest, strengthArgument } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";

export const jarDose = defineFunction({
  id: "JARDOSE",
  category: "Charge",
  summary:
    "Concentrate for a bath by a jar test: the label's dose times the ratio of the smallest doses that pass in your water and in the reference water.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the finished bath, concentrate included" }),
    positiveNumber(
      "dose_in_this_water",
      "smallest dose that passes in a jar of your water; an amount, not the N of 1+N",
      "any one unit",
    ),
    positiveNumber(
      "dose_in_reference",
      "smallest dose that passes in an equal jar of the reference water, such as reverse osmosis water",
      "same unit",
    ),
    strengthArgument(
      "label_dose",
      'strength that the label asks for in the reference water, written as in DOSE: "1+40", "1 in 40", "2.5%", "3 fl oz/gal" or a share such as 0.025',
    ),
    labelHighest,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "concentrate for the bath, all of it",
  },
  examples: [
    {
      formula: '=BATH.JARDOSE(82,3,2,"1+40")',
      cells: [82, 3, 2, "1+40"],
      result: 3,
      tolerance: 1e-9,
      source: "by definition: 2 gallons of concentrate in 82 at 1+40, times 3/2",
    },
  ],
  notes: [
    "Gives the whole dose, not the extra over the label's. Below the label's dose where your water passes with less than the reference.",
    "Give label_highest, and it refuses (#N/A) a bath that is stronger than the label allows; otherwise it does not know. A stronger bath burns worse and attacks more materials.",
    "Takes both jars to be of one size, temperature, soil and concentrate, judged alike.",
    "A ratio typed into a cell as 1:40 is turned into a time of day by Excel; such a time is refused, except those of 1:12, 1:48 and 1:84, which cannot be told from 5, 7.5 and 10 %. A bare share of more than 0.1 is refused: write 0.5% or 50%. Type 1+40 as text.",
  ],
  source: "Volume × label strength × dose in this water / dose in the reference water.",
  compute: ([volume, inThisWater, inReference, labelStrength, highest], call) => {
    const doses = { inThisWater, inReference };
    const amount = doseFor(volume, doses, labelStrength);
    checkStrength(jarStrength(doses, labelStrength), highest);
    return inSystem("volume", amount, call);
  },
});
