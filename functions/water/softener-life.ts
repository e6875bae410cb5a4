import { kilogramsPerCubicMeter } from "../../src/core/units/quantity.ts";
import { softenerLife as lifeOf, usualIronFactor } from "../../src/core/water/softener-life.ts";
import { optionalNumber, system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { optionalQuantity, quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareHardnessNotes } from "./bare-figures.ts";

export const softenerLife = defineFunction({
  id: "SOFTENERLIFE",
  category: "Water",
  summary: "Volume of water that a softener treats between two regenerations.",
  arguments: [
    quantity("capacity_grains", {
      kind: "mass",
      help: "what the softener takes up at its salt setting, as CaCO3; not the nominal size",
      bareUnit: "grain",
    }),
    quantity("hardness", {
      kind: "hardness",
      help: 'hardness of the raw water; up to 50 with its unit, such as "18 gpg"',
    }),
    optionalQuantity("iron", {
      kind: "amount per volume",
      help: "dissolved iron in the raw water; none if left out",
      bareUnit: "mg/L",
    }),
    optionalNumber(
      "iron_factor",
      "hardness that 1 mg/L of iron counts as; 4 if left out. A convention that differs between sources (2, 3 or 4)",
      "gpg per mg/L",
      usualIronFactor,
    ),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "volume between regenerations",
  },
  examples: [
    {
      formula: '=BATH.SOFTENERLIFE(8000,"11 gpg")',
      cells: [8000, "11 gpg"],
      result: 727,
      tolerance: 0.5,
      source: "portablewatersoftener.com, frequency of regeneration: 8000 grains / 11 grains per gallon is 727 gallons",
    },
    {
      formula: '=BATH.SOFTENERLIFE(15120,"18 gpg",1.5,2)',
      cells: [15120, "18 gpg", 1.5, 2],
      result: 720,
      tolerance: 0.01,
      source:
        "cheresources.com, Sizing Conventional Water Softeners: 18 + 2 × 1.5 = 21 gpg, and 15,120 grains for 3 days of 240 gallons",
    },
  ],
  notes: [
    ...bareHardnessNotes,
    "Capacity depends on the salt used per regeneration and falls as the resin ages: test the softened water. Does not know manganese, flow rate or a reserve; regenerate before the figure, not at it.",
    "Softened water keeps its alkalinity, which uses up alkali in the bath (ALKALINITYDOSE).",
  ],
  source: "Capacity / (hardness + iron factor × iron). The factor is a convention of the trade: 2, 3 or 4.",
  compute: ([capacity, hardness, iron, ironFactor], call) =>
    inSystem("volume", lifeOf({ capacity, hardness, iron: iron ?? kilogramsPerCubicMeter(0), ironFactor }), call),
});
