import { bandNotes } from "./band-notes.ts";
import { baseline, waterAlkalinity } from "../shared-arguments.ts";
import { bathTemperature, openingDose, roomTemperature, topUpReading } from "./top-up-arguments.ts";
import { builder } from "../builder-argument.ts";
import { defineFunction } from "../define-function.ts";
import { firstAddition, topUp, usualHouseShare } from "../../src/core/bath/top-up.ts";
import { inSystem } from "../in-system.ts";
import { optionalNumber, system } from "../arguments.ts";

export const topUpRange = defineFunction({
  id: "TOPUPRANGE",
  category: "Threshold and top-up",
  summary: "Spills the low, best and high estimate of a top-up and what to add first, since the first addition is read again.",
  arguments: [
    openingDose,
    baseline,
    topUpReading,
    builder,
    bathTemperature,
    waterAlkalinity,
    optionalNumber("house_share", "largest first addition as a share of the opening dose; 1/3 if left out (common practice, no source)", "share, more than 0 to 1", usualHouseShare),
    system,
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "one row: low, best, high, first addition",
  },
  examples: [
    {
      formula: '=BATH.TOPUPRANGE(3,11.3,10.8,"hydroxide")',
      cells: [3, 11.3, 10.8, "hydroxide"],
      result: [[2.051, 2.051, 2.051, 1]],
      tolerance: 0.0005,
      source: "3 × (1 − 10^−0.5), and a third of the opening dose first (common practice, no source)",
    },
  ],
  notes: [
    ...bandNotes,
    "Low and high run over both losses, acid and dilution, and over the water's alkalinity where it is not given.",
    "Does not know the label's highest strength; the label wins. Reading and baseline must be at the same temperature.",
  ],
  source: "As TOPUP; first addition is the smaller of best and house share × opening dose.",
  compute: ([dose, baselinePh, reading, madeOf, temperature, alkalinity, houseShare], call) => {
    const bath = {
      baseline: baselinePh,
      reading,
      builder: madeOf,
      temperature: temperature ?? roomTemperature,
      alkalinity,
      loss: undefined,
    };
    const range = topUp(dose, bath);
    const row = [range.low, range.best, range.high, firstAddition(dose, range.best, houseShare)];
    return [row.map((volume) => inSystem("volume", volume, call))];
  },
});
