import { unspentAt } from "../../src/core/bath/reading-at.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { waterAlkalinity } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";

export const phAt = defineFunction({
  id: "PHAT",
  category: "pH and the meter",
  summary: "What the same bath reads at another temperature with a perfect meter, nothing lost.",
  arguments: [
    phReading("ph", "the bath's pH at the first temperature"),
    quantity("from_temperature", {
      kind: "temperature",
      help: "temperature at which the bath has this pH",
      ofSample: true,
    }),
    quantity("to_temperature", { kind: "temperature", help: "temperature to know the pH at", ofSample: true }),
    builder,
    waterAlkalinity,
    system,
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "best estimate of the reading" },
  examples: [
    {
      formula: '=BATH.PHAT(11.42,"25 C","60 C","hydroxide")',
      cells: [11.42, "25 C", "60 C", "hydroxide"],
      result: 10.459,
      tolerance: 0.025,
      source:
        "11.42 + 13.034 − 13.995, pKw of the CRC Handbook table at 60 and 25 °C; the newer IAPWS value is 0.013 lower",
    },
    {
      formula: '=BATH.PHAT(11.47,"25 C","45 C")',
      cells: [11.47, "25 C", "45 C"],
      result: 10.9,
      tolerance: 0.03,
      source:
        "wash baths of three recipes in reverse osmosis water read 10.88 to 10.91 (PHREEQC 3.8.8, between its nearest doses)",
    },
  ],
  notes: [
    ...modelNotes,
    "Temperature compensation does not do this: it corrects the electrode, not the bath.",
    "Does not know what the bath has lost since; TRIGGER and VERDICT do.",
  ],
  source:
    "Chemical equilibrium of builder and water at both temperatures, the strength chosen to give the first reading.",
  compute: ([reading, from, to, madeOf, alkalinity]) =>
    unspentAt({ builder: madeOf, alkalinity }, reading, from, to).best,
});
