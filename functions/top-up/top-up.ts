import { checkPoured } from "../../src/core/bath/label-limit.ts";
import { bestTopUp, losses } from "../../src/core/bath/top-up.ts";
import { optionalChoice, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { bathLimit, labelNote, labelVolume } from "../arguments/label-arguments.ts";
import { baseline, meterAccuracy, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
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
    meterAccuracy,
    labelVolume,
    labelHighest,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "concentrate, in the volume unit of the system; 0 at the baseline, above it or within the meter's accuracy of it. All of it: TOPUPRANGE says what to add first",
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
      formula: '=BATH.TOPUP(19.5,11.62,11.05,"hydroxide","22 C","0 mg/L","acid",,,,"metric")',
      cells: [19.5, 11.62, 11.05, "hydroxide", "22 C", "0 mg/L", "acid", null, null, null, "metric"],
      result: 14.25,
      tolerance: 0.65,
      source: "1 − 10^−0.57 of 19.5 L: 73.1 % of the hydroxide; its volume and its ions add 0.6 L",
    },
    {
      formula: "=BATH.TOPUP(4.178,11.42,11.39)",
      cells: [4.178, 11.42, 11.39],
      result: 0,
      source: "11.39 is within 0.05 of 11.42, as far as a meter may be off; common practice, no source",
    },
  ],
  notes: [
    ...modelNotes,
    topUpBounds,
    "Add a part first, mix and read again: the bath's answer is better than any estimate. pH cannot tell acid from dilution; a titration can.",
    "A fall of no more than the meter may be off is none: the answer is 0.",
    labelNote,
    "Reading and baseline must be at the same temperature.",
  ],
  source:
    "Chemical equilibrium of builder and water, its strength chosen so that the opening dose gives the baseline; soil counts as strong acid. Plain hydroxide: nearly 1 − 10^−(baseline − reading) of the opening dose.",
  compute: ([dose, baselinePh, reading, madeOf, temperature, alkalinity, loss, accuracy, volume, highest], call) => {
    const bath = { baseline: baselinePh, temperature, builder: madeOf, alkalinity };
    const amount = bestTopUp(dose, bath, reading, { loss, accuracy });
    checkPoured(dose + amount, bathLimit(volume, highest));
    return inSystem("volume", amount, call);
  },
});
