import { alkalinityDose as doseFor } from "../../src/core/bath/alkalinity-dose.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { quantity, quantityOrWrittenZero } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareAlkalinityNotes } from "../water/bare-figures.ts";

export const alkalinityDose = defineFunction({
  id: "ALKALINITYDOSE",
  category: "Charge",
  summary: "Extra concentrate that the water's bicarbonate uses up before the pH can rise.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of water, or of the bath" }),
    quantityOrWrittenZero("alkalinity", {
      kind: "alkalinity",
      help: 'alkalinity of the water; up to 20 with its unit, such as "4.8 meq/L"',
    }),
    quantity("strength_eq_L", {
      kind: "alkalinity",
      help: "alkali in the concentrate, from a titration or the data sheet",
      bareUnit: "eq/L",
    }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "extra concentrate",
  },
  examples: [
    {
      formula: "=BATH.ALKALINITYDOSE(100,500.43,1)",
      cells: [100, 500.43, 1],
      result: 1,
      tolerance: 0.0005,
      source:
        "50.043 mg CaCO3 per milliequivalent (Standard Methods 2320 B uses 50,000 mg/eq): 10 meq/L against 1000 meq/L",
    },
  ],
  notes: [
    "Takes all the water's alkalinity as bicarbonate, true of drinking and softened water. Softening removes hardness and leaves alkalinity.",
    ...bareAlkalinityNotes,
    "The carbonate that forms buffers the bath; that part is left out.",
    "Refuses an extra of more than half the volume: a bath is never more concentrate than water, so a figure is off.",
    "Does not know the label's highest strength; the label wins.",
  ],
  source: "One equivalent of bicarbonate takes one of hydroxide: volume × alkalinity / strength.",
  compute: ([volume, alkalinity, strength], call) => inSystem("volume", doseFor(volume, alkalinity, strength), call),
});
