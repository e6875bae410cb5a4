import { topUpIfAny } from "../../src/core/bath/top-up.ts";
import { system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { baseline, meterAccuracy, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "./model-notes.ts";
import { bathTemperature, openingDose, topUpReadings } from "./top-up-arguments.ts";

const overOpeningDose = "over the opening dose";

export const topUpTable = defineFunction({
  id: "TOPUPTABLE",
  category: "What-if",
  summary: "Returns a table with a row for each reading: reading, low, best and high top-up.",
  arguments: [openingDose, baseline, topUpReadings, builder, bathTemperature, waterAlkalinity, meterAccuracy, system],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "pH, then US gal (US), L (metric), imperial gal (imperial)",
    help: "one row for each reading: reading, low, best, high; “over the opening dose” where a new bath is due instead",
  },
  examples: [
    {
      formula: '=BATH.TOPUPTABLE(4.2,11.3,{11.3;10.8},"unknown","45 C","200 mg/L")',
      cells: [4.2, 11.3, [[11.3], [10.8]], "unknown", "45 C", "200 mg/L"],
      result: [
        [11.3, 0, 0, 0],
        [10.8, 2.02, 2.52, 3.19],
      ],
      tolerance: 0.4,
      source:
        "nothing at the baseline; three recipes in softened and hard water need 0.48 to 0.76 of the opening dose (PHREEQC 3.8.8), and the range adds what the meter may be off and what silicate loses to hard water",
    },
  ],
  notes: [
    ...modelNotes,
    "pH alone cannot tell acid soil from dilution or carbon dioxide from the air: low and high span all three, and the meter's accuracy; high stops at the opening dose.",
    "Refuses a baseline within 0.1 of 12.5, where a bath that is poured away is hazardous waste (D002).",
    "Does not know the label's highest strength; the label wins.",
  ],
  source: "TOPUPRANGE for each reading.",
  compute: ([dose, baselinePh, readings, madeOf, temperature, alkalinity, accuracy], call) => {
    const bath = { baseline: baselinePh, temperature, builder: madeOf, alkalinity };
    return readings.map((reading) => {
      const range = topUpIfAny(dose, bath, reading, { accuracy });
      const cells = range === undefined ? undefined : [range.low, range.best, range.high];
      return cells === undefined
        ? [reading, overOpeningDose, overOpeningDose, overOpeningDose]
        : [reading, ...cells.map((volume) => inSystem("volume", volume, call))];
    });
  },
});
