import { verdict as verdictOn } from "../../src/core/bath/verdict.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import type { Kelvin } from "../../src/core/units/quantity.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import {
  baseline,
  baselineTemperature,
  drop,
  readingTemperature,
  waterAlkalinity,
} from "../arguments/shared-arguments.ts";
import { temperaturePair } from "../arguments/temperature-pair.ts";
import type { CallContext } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";

function rereadAt(temperature: Kelvin, call: CallContext): string {
  return `re-read at ${String(Math.round(inSystem("temperature", temperature, call)))} ${defaultUnit("temperature", call.system).symbol}`;
}

export const verdict = defineFunction({
  id: "VERDICT",
  category: "Threshold and top-up",
  summary:
    "Judges a reading: hold, near, top up, or re-read at the baseline's temperature where the temperature gap leaves it open.",
  arguments: [
    phReading("reading", "the bath's pH now, 0 to 14.5"),
    baseline,
    drop,
    baselineTemperature,
    readingTemperature,
    builder,
    waterAlkalinity,
    system,
  ],
  result: {
    excelType: "string",
    dimensionality: "scalar",
    help: '"hold", "near" (within 0.1 above the trigger), "top up", or "re-read at N °F"',
  },
  examples: [
    {
      formula: '=BATH.VERDICT(10.83,11.42,0.5,"25 C","25 C")',
      cells: [10.83, 11.42, 0.5, "25 C", "25 C"],
      result: "top up",
      source: "10.83 is below 11.42 − 0.5; common practice, no source",
    },
    {
      formula: "=BATH.VERDICT(11,11.3)",
      cells: [11, 11.3],
      result: "hold",
      source: "11.0 is more than 0.1 above 11.3 − 0.5; common practice, no source",
    },
  ],
  notes: [
    ...modelNotes,
    "“top up” and “hold” are given only where every builder and way of wearing down agrees; where they do not, the answer is to read again at the baseline's temperature.",
    "Does not know meter drift, mixing or dirt on the electrode.",
  ],
  source:
    "Reading against the trigger of TRIGGER, low and high; the limits of 0.5 and 0.1 are common practice, no source.",
  compute: ([reading, baselinePh, fall, from, to, madeOf, alkalinity], call) => {
    const temperatures = temperaturePair(from, to);
    const judged = verdictOn(reading, { baseline: baselinePh, drop: fall, temperatures, builder: madeOf, alkalinity });
    return judged === "re-read" && temperatures !== undefined ? rereadAt(temperatures.baseline, call) : judged;
  },
});
