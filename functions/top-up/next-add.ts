import { checkPoured } from "../../src/core/bath/label-limit.ts";
import { nextAddition } from "../../src/core/bath/next-addition.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { bathLimit, labelNote, labelVolume } from "../arguments/label-arguments.ts";
import { optionalQuantity, quantity } from "../arguments/quantity-argument.ts";
import { baseline, houseShare, meterAccuracy, tolerance, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "./model-notes.ts";
import { bathTemperature } from "./top-up-arguments.ts";

export const nextAdd = defineFunction({
  id: "NEXTADD",
  category: "Threshold and top-up",
  summary:
    "What to add next, judged from what the last addition did and never more than a first addition; 0 once the bath is back at its baseline.",
  arguments: [
    quantity("added", { kind: "volume", help: "concentrate added last" }),
    phReading("before", "pH before that addition, at the baseline's temperature"),
    phReading("after", "pH after it was mixed in, at the same temperature"),
    baseline,
    builder,
    bathTemperature,
    waterAlkalinity,
    tolerance,
    optionalQuantity("opening_dose", {
      kind: "volume",
      help: "concentrate that the bath was opened with; left out: no more than was added last",
    }),
    houseShare,
    meterAccuracy,
    labelVolume,
    labelHighest,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "concentrate to add before the next reading, in the volume unit of the system",
  },
  examples: [
    {
      formula: '=BATH.NEXTADD(1,10.92,11.17,11.42,"hydroxide",,,,6)',
      cells: [1, 10.92, 11.17, 11.42, "hydroxide", null, null, null, 6],
      result: 1.778,
      tolerance: 0.06,
      source:
        "hydroxide still missing over hydroxide gained: (10^0.5 − 10^0.25) / (10^0.25 − 1) of the addition; its volume and its ions add 3 %",
    },
    {
      formula: '=BATH.NEXTADD(1,10.92,11.17,11.42,"hydroxide",,,,3)',
      cells: [1, 10.92, 11.17, 11.42, "hydroxide", null, null, null, 3],
      result: 1,
      tolerance: 1e-9,
      source: "a third of the opening dose, less than the 1.778 that are missing; common practice, no source",
    },
    {
      formula: "=BATH.NEXTADD(1,10.92,11.32,11.42)",
      cells: [1, 10.92, 11.32, 11.42],
      result: 0,
      source: "11.32 is within 0.1 of 11.42 and counts as recovered; common practice, no source",
    },
    {
      formula: '=BATH.NEXTADD(1,10.92,11.32,11.42,"hydroxide",,,0.05)',
      cells: [1, 10.92, 11.32, 11.42, "hydroxide", null, null, 0.05],
      result: 0.43,
      tolerance: 0.03,
      source:
        "11.32 is not within 0.05 of 11.42; hydroxide still missing over hydroxide gained: (10^0.5 − 10^0.4) / (10^0.4 − 1) of the addition",
    },
  ],
  notes: [
    ...modelNotes,
    "Refuses (#N/A) where the bath rose by no more than twice the meter's accuracy, since two readings of one bath can differ by that: mix and read again.",
    "Refuses a baseline within 0.1 of 12.5, where a bath that is poured away is hazardous waste (D002).",
    labelNote,
    "Opening dose, the addition before and this one are counted against the label; without the opening dose the two additions alone. A bath that needs more each time is wearing out.",
  ],
  source:
    "Equilibrium of builder and water: concentrate from the reading after to the baseline, over that from before to after, times the addition; at most house share × opening dose.",
  compute: (
    [
      added,
      before,
      after,
      baselinePh,
      madeOf,
      temperature,
      alkalinity,
      within,
      openingDose,
      share,
      accuracy,
      volume,
      highest,
    ],
    call,
  ) => {
    const bath = { baseline: baselinePh, temperature, builder: madeOf, alkalinity };
    const practice = { tolerance: within, accuracy, openingDose, houseShare: share };
    const amount = nextAddition(added, { before, after }, bath, practice);
    checkPoured((openingDose ?? 0) + added + amount, bathLimit(volume, highest));
    return inSystem("volume", amount, call);
  },
});
