import { phAtDose as phWith } from "../../src/core/bath/other-dose.ts";
import { system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { waterAlkalinity } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";
import { bathTemperature, knownDose, knownPh } from "../top-up/top-up-arguments.ts";

export const phAtDose = defineFunction({
  id: "PHATDOSE",
  category: "Charge",
  summary: "What-if: pH if the same fresh bath held another dose.",
  arguments: [
    knownDose,
    knownPh,
    quantity("new_dose", { kind: "volume", help: "the other dose, in the same volume of bath" }),
    builder,
    bathTemperature,
    waterAlkalinity,
    system,
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "best estimate, at the same temperature" },
  examples: [
    {
      formula: '=BATH.PHATDOSE(1,11.42,2,"hydroxide","25 C","0 mg/L")',
      cells: [1, 11.42, 2, "hydroxide", "25 C", "0 mg/L"],
      result: 11.721,
      tolerance: 0.02,
      source: "twice the hydroxide is log10 2 = 0.301 more; ions take a little of it",
    },
  ],
  notes: [
    ...modelNotes,
    "Refuses more than 10 times the known dose, or what the chemistry does not reach (own choice).",
    "For a fresh bath. A bath at 12.5 or more is hazardous waste when it is poured away (D002). Does not know the label's highest strength; the label wins.",
  ],
  source: "Chemical equilibrium of builder and water, the strength chosen so that the known dose gives its pH.",
  compute: ([dose, reading, newDose, madeOf, temperature, alkalinity]) =>
    phWith({ baseline: reading, temperature, builder: madeOf, alkalinity }, dose, newDose).best,
});
