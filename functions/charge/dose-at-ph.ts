import { checkPoured } from "../../src/core/bath/label-limit.ts";
import { doseAtPh as doseFor } from "../../src/core/bath/other-dose.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { bathLimit, labelVolume } from "../arguments/label-arguments.ts";
import { waterAlkalinity } from "../arguments/shared-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";
import { bathTemperature, knownDose, knownPh } from "../top-up/top-up-arguments.ts";

export const doseAtPh = defineFunction({
  id: "DOSEATPH",
  category: "Charge",
  summary: "Dose that would give the same fresh bath another pH: the inverse of PHATDOSE.",
  arguments: [
    knownDose,
    knownPh,
    phReading("target_ph", "pH wanted, at the same temperature; at most 12.4"),
    builder,
    bathTemperature,
    waterAlkalinity,
    labelVolume,
    labelHighest,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "best estimate of the whole dose, in the volume unit of the system",
  },
  examples: [
    {
      formula: '=BATH.DOSEATPH(1,11.42,11.721,"hydroxide","25 C","0 mg/L")',
      cells: [1, 11.42, 11.721, "hydroxide", "25 C", "0 mg/L"],
      result: 2,
      tolerance: 0.1,
      source: "log10 2 = 0.301 more pH is twice the hydroxide; ions take a little of it",
    },
  ],
  notes: [
    ...modelNotes,
    "For an unknown builder the middle of four doses, which undoes PHATDOSE to a few percent; exactly for a known builder.",
    "Refuses a target within 0.1 of 12.5, where a bath that is poured away is hazardous waste (D002), and (#N/A) more than 10 times the known dose, which is no estimate any more (own choice).",
    "Give volume and label_highest, and it refuses (#N/A) a bath that is stronger than the label allows. For a fresh bath; a pH is a dose at one temperature only.",
  ],
  source: "Chemical equilibrium of builder and water, the strength chosen so that the known dose gives its pH.",
  compute: ([dose, reading, target, madeOf, temperature, alkalinity, volume, highest], call) => {
    const bath = { baseline: reading, temperature, builder: madeOf, alkalinity };
    const amount = doseFor(bath, dose, target);
    checkPoured(amount, bathLimit(volume, highest));
    return inSystem("volume", amount, call);
  },
});
