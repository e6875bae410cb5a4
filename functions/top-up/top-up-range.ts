import { checkPoured } from "../../src/core/bath/label-limit.ts";
import { firstAddition, topUp } from "../../src/core/bath/top-up.ts";
import { system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { bathLimit, labelNote, labelVolume } from "../arguments/label-arguments.ts";
import { baseline, houseShare, meterAccuracy, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes, topUpBounds } from "./model-notes.ts";
import { bathTemperature, openingDose, topUpReading } from "./top-up-arguments.ts";

export const topUpRange = defineFunction({
  id: "TOPUPRANGE",
  category: "Threshold and top-up",
  summary:
    "Returns the low, best and high estimate of a top-up and what to add first, since you read again after the first addition.",
  arguments: [
    openingDose,
    baseline,
    topUpReading,
    builder,
    bathTemperature,
    waterAlkalinity,
    houseShare,
    meterAccuracy,
    labelVolume,
    labelHighest,
    system,
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "one row: low, best, high, first addition; high stops at the opening dose",
  },
  examples: [
    {
      formula: '=BATH.TOPUPRANGE(1,11.3,10.8,"unknown","45 C","200 mg/L")',
      cells: [1, 11.3, 10.8, "unknown", "45 C", "200 mg/L"],
      result: [[0.48, 0.6, 0.76, 1 / 3]],
      tolerance: 0.095,
      source:
        "three recipes in softened and hard water need 0.48 (dilution) to 0.76 (carbon dioxide) of the opening dose (PHREEQC 3.8.8), and the range adds what the meter may be off and what silicate loses to hard water; a third first is common practice, no source",
    },
  ],
  notes: [
    ...modelNotes,
    "pH alone cannot tell acid soil from dilution or carbon dioxide from the air: low and high span all three, and what the reading would be with the meter off by its accuracy; a titration narrows them (TOPUPTITRATION).",
    topUpBounds,
    labelNote,
    "The label is held to the best estimate, not to the high one. Reading and baseline must be at the same temperature.",
  ],
  source:
    "As TOPUP, the reading more and less by the meter's accuracy; first addition is the smaller of best and house share × opening dose.",
  compute: ([dose, baselinePh, reading, madeOf, temperature, alkalinity, share, accuracy, volume, highest], call) => {
    const bath = { baseline: baselinePh, temperature, builder: madeOf, alkalinity };
    const range = topUp(dose, bath, reading, { accuracy });
    checkPoured(dose + range.best, bathLimit(volume, highest));
    const row = [range.low, range.best, range.high, firstAddition(dose, range.best, share)];
    return [row.map((volume) => inSystem("volume", volume, call))];
  },
});
