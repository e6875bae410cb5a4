import { hardnessClass as classOf, hardnessSchemes } from "../../src/core/water/hardness-class.ts";
import { choice } from "../arguments/arguments.ts";
import { quantityOrWrittenZero } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareHardnessNotes } from "./bare-figures.ts";

export const hardnessClass = defineFunction({
  id: "HARDNESSCLASS",
  category: "Water",
  summary: "Names the hardness class of a water by a published scheme.",
  arguments: [
    quantityOrWrittenZero("hardness", {
      kind: "hardness",
      help: 'total hardness; up to 50 with its unit, such as "18 gpg", "10 °dH"',
    }),
    choice("scheme", "USGS (default) or WQA", hardnessSchemes, "USGS"),
  ],
  result: { excelType: "string", dimensionality: "scalar", help: "the class in words, such as moderately hard" },
  examples: [
    {
      formula: "=BATH.HARDNESSCLASS(61)",
      cells: [61],
      result: "moderately hard",
      source: "USGS classes: 61 to 120 mg/L",
    },
    {
      formula: '=BATH.HARDNESSCLASS("45 mg/L","WQA")',
      cells: ["45 mg/L", "WQA"],
      result: "slightly hard",
      source: "WQA classes: 1 to 3.5 gpg; USGS calls the same water soft",
    },
  ],
  notes: [
    ...bareHardnessNotes,
    "Schemes differ between authorities, so name yours. Softened water is not the same as soft water: it keeps its alkalinity.",
  ],
  source:
    "USGS: 0 to 60, 61 to 120, 121 to 180, above 180 mg/L. Water Quality Association: below 1, to 3.5, to 7, to 10.5, above 10.5 gpg.",
  compute: ([hardness, scheme]) => classOf(hardness, scheme),
});
