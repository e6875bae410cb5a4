import { hardnessDose as doseFor } from "../../src/core/bath/hardness-dose.ts";
import { hardness as noHardness } from "../../src/core/units/quantity.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { optionalQuantity, quantity, quantityOrWrittenZero } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareHardnessNotes } from "../water/bare-figures.ts";

export const hardnessDose = defineFunction({
  id: "HARDNESSDOSE",
  category: "Charge",
  summary: "Extra concentrate that ties up the hardness above what the label allows for.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of water, or of the bath" }),
    quantityOrWrittenZero("hardness", {
      kind: "hardness",
      help: 'hardness of the water; up to 50 with its unit, such as "18 gpg"',
    }),
    quantity("capacity", {
      kind: "amount per volume",
      help: "how much hardness 1 mL of concentrate can tie up, from the data sheet or a jar test",
      bareUnit: "mg/mL",
    }),
    optionalQuantity("label_hardness", {
      kind: "hardness",
      help: "hardness that the label's rate already allows for, up to 50 with its unit; none if left out",
    }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "extra concentrate; 0 where the label allows for all the hardness",
  },
  examples: [
    {
      formula: "=BATH.HARDNESSDOSE(8.05,325,2.4)",
      cells: [8.05, 325, 2.4],
      result: 1.09,
      tolerance: 0.002,
      source: "8.05 US gal at 325 mg/L carries 9.9 g of CaCO3; divided by 2.4 mg/mL",
    },
  ],
  notes: [
    "Capacity falls with temperature and differs by product: take it from the data sheet or a jar test. 1 mg/mL is 1 g/L.",
    ...bareHardnessNotes,
    "Refuses an extra of more than half the volume: a bath is never more concentrate than water, so a figure is off.",
    "Does not know the label's highest strength; the label wins.",
  ],
  source: "Volume × (hardness − label hardness) / capacity.",
  compute: ([volume, hardness, capacity, labelHardness], call) =>
    inSystem("volume", doseFor({ volume, hardness, capacity, labelHardness: labelHardness ?? noHardness(0) }), call),
});
