import { checkPoured } from "../../src/core/bath/label-limit.ts";
import { titratedTopUp } from "../../src/core/bath/titrated-top-up.ts";
import { optionalNumber, positiveNumber } from "../arguments/arguments.ts";
import { bathLimit, labelNote, plainLabelVolume } from "../arguments/label-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";

export const topUpTitration = defineFunction({
  id: "TOPUPTITRATION",
  category: "Threshold and top-up",
  summary: "Top-up by titration: the share of the fresh bath's titration that is gone, times the opening dose.",
  arguments: [
    positiveNumber("opening_dose", "concentrate that the bath was opened with", "any unit of volume"),
    positiveNumber("fresh_titer", "titrant that a sample of the fresh bath took", "mL, or drops"),
    positiveNumber("titer_now", "titrant that a sample of the same size takes now", "same unit"),
    optionalNumber("blank", "titrant that the water alone takes; 0 if left out", "same unit", 0),
    plainLabelVolume,
    labelHighest,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "unit of the opening dose",
    help: "concentrate to add; 0 where nothing is gone",
  },
  examples: [
    {
      formula: "=BATH.TOPUPTITRATION(100,8,6)",
      cells: [100, 8, 6],
      result: 25,
      tolerance: 1e-9,
      source: "in proportion: 100 at the start, the titration down by a quarter, 25",
    },
    {
      formula: "=BATH.TOPUPTITRATION(100,9,7,1)",
      cells: [100, 9, 7, 1],
      result: 25,
      tolerance: 1e-9,
      source: "the same with a water that takes 1 mL itself",
    },
  ],
  notes: [
    "Titrate to the same end point both times: pH 8.3 sees the alkali that is left free, pH 4.5 also counts what soil has used up.",
    labelNote,
  ],
  source: "Opening dose × (fresh − now) / (fresh − blank).",
  compute: ([dose, fresh, now, blank, volume, highest]) => {
    const amount = titratedTopUp(dose, { fresh, now, blank });
    checkPoured(dose + amount, bathLimit(volume, highest));
    return amount;
  },
});
