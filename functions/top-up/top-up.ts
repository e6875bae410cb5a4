import { losses, topUp as topUpOf } from "../../src/core/bath/top-up.ts";
import { optionalChoice, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { baseline, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes, topUpBounds } from "./model-notes.ts";
import { bathTemperature, openingDose, topUpReading } from "./top-up-arguments.ts";

export const topUp = defineFunction({
  id: "TOPUP",
  category: "Threshold and top-up",
  summary: "Best estimate of the concentrate that brings a bath back to its baseline.",
  arguments: [
    openingDose,
    baseline,
    topUpReading,
    builder,
    bathTemperature,
    waterAlkalinity,
    optionalChoice(
      "loss",
      "how the bath fell: acid (soil used up alkali) or dilution (bath replaced by water); left out: middle of the two",
      losses,
    ),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "concentrate, in the volume unit of the system; 0 at or above the baseline. All of it: TOPUPRANGE says what to add first",
  },
  examples: [
    {
      formula: '=BATH.TOPUP(1,11.42,10.92,"hydroxide")',
      cells: [1, 11.42, 10.92, "hydroxide"],
      result: 0.684,
      tolerance: 0.025,
      source:
        "1 − 10^−0.5 of the opening dose: half a point is 68.4 % of the hydroxide; its volume and its ions add 0.02",
    },
    {
      formula: '=BATH.TOPUP(1,11.3,10.8,"unknown","45 C","200 mg/L","acid")',
      cells: [1, 11.3, 10.8, "unknown", "45 C", "200 mg/L", "acid"],
      result: 0.65,
      tolerance: 0.08,
      source:
        "three recipes in softened and hard water need 0.57 to 0.73 of the opening dose after acid (PHREEQC 3.8.8)",
    },
  ],
  notes: [
    ...modelNotes,
    topUpBounds,
    "Add a part first, mix and read again: the bath's answer is better than any estimate. pH cannot tell acid from dilution; a titration can.",
    "Does not know the label's highest strength; the label wins. Reading and baseline must be at the same temperature.",
  ],
  source:
    "Chemical equilibrium of builder and water, its strength chosen so that the opening dose gives the baseline; soil counts as strong acid. Plain hydroxide: nearly 1 − 10^−(baseline − reading) of the opening dose.",
  compute: ([dose, baselinePh, reading, madeOf, temperature, alkalinity, loss], call) => {
    const bath = { baseline: baselinePh, temperature, builder: madeOf, alkalinity };
    return inSystem("volume", topUpOf(dose, bath, reading, { loss }).best, call);
  },
});
