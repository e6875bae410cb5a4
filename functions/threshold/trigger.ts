import { trigger as triggerOf } from "../../src/core/bath/trigger.ts";
import { system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import {
  baseline,
  baselineTemperature,
  drop,
  readingTemperature,
  waterAlkalinity,
} from "../arguments/shared-arguments.ts";
import { temperaturePair } from "../arguments/temperature-pair.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";

export const trigger = defineFunction({
  id: "TRIGGER",
  category: "Threshold and top-up",
  summary: "pH at which a top-up is due; with both temperatures, as it reads at the temperature of the reading.",
  arguments: [baseline, drop, baselineTemperature, readingTemperature, builder, waterAlkalinity, system],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "best estimate of the trigger" },
  examples: [
    {
      formula: "=BATH.TRIGGER(11.42)",
      cells: [11.42],
      result: 10.92,
      tolerance: 1e-9,
      source: "baseline less half a point; common practice, no source",
    },
    {
      formula: '=BATH.TRIGGER(11.42,0.5,"25 C","60 C","hydroxide")',
      cells: [11.42, 0.5, "25 C", "60 C", "hydroxide"],
      result: 9.959,
      tolerance: 0.015,
      source: "10.92 + 13.034 − 13.995, pKw of the CRC Handbook table at 60 and 25 °C",
    },
  ],
  notes: [...modelNotes, "Does not know the meter: temperature compensation corrects the electrode, not the bath."],
  source:
    "Baseline − drop, then the equilibrium of builder and water at the other temperature: plain hydroxide moves with pKw of water (IAPWS R11-07), a buffered bath by less.",
  compute: ([baselinePh, fall, from, to, madeOf, alkalinity]) =>
    triggerOf({
      baseline: baselinePh,
      drop: fall,
      temperatures: temperaturePair(from, to),
      builder: madeOf,
      alkalinity,
    }).best,
});
