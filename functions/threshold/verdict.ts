import { verdictIfCelsius } from "../../src/core/bath/celsius-slip.ts";
import type { TriggerQuestion } from "../../src/core/bath/trigger.ts";
import type { Verdict } from "../../src/core/bath/verdict.ts";
import { verdict as verdictOn } from "../../src/core/bath/verdict.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import type { Kelvin, PH } from "../../src/core/units/quantity.ts";
import { fahrenheitOrCelsius } from "../../src/core/units/unclear-number.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { refuse } from "../arguments/read-cell.ts";
import {
  baseline,
  baselineTemperature,
  drop,
  judgedTemperature,
  waterAlkalinity,
} from "../arguments/shared-arguments.ts";
import { temperaturePair } from "../arguments/temperature-pair.ts";
import { quoted } from "../arguments/wording.ts";
import type { CallContext } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";

function rereadAt(temperature: Kelvin, call: CallContext): string {
  return `re-read at ${String(Math.round(inSystem("temperature", temperature, call)))} ${defaultUnit("temperature", call.system).symbol}`;
}

function said(judged: Verdict, { temperatures }: TriggerQuestion, call: CallContext): string {
  return judged === "re-read" && temperatures !== undefined ? rereadAt(temperatures.baseline, call) : judged;
}

/** A bare number that would be judged otherwise as °C is asked about, where the reading allows both. */
function checkScale(reading: PH, judged: Verdict, question: TriggerQuestion, call: CallContext): void {
  const bare = call.system === "US" && !call.systemNamed ? call.bare.get(judgedTemperature.name) : undefined;
  if (bare === undefined) return;
  const ifCelsius = verdictIfCelsius(reading, question, bare);
  if (ifCelsius === undefined || ifCelsius === judged) return;
  const {
    readings: [celsius, fahrenheit],
    slip,
  } = fahrenheitOrCelsius(bare);
  const [inFahrenheit, inCelsius] = [judged, ifCelsius].map((each) => quoted(said(each, question, call)));
  refuse(
    judgedTemperature.name,
    `is ${String(bare)}, without a unit: at ${fahrenheit} the verdict is ${String(inFahrenheit)}, at ${celsius} (${slip}) ${String(inCelsius)}; write ${quoted(fahrenheit)} or ${quoted(celsius)}.`,
  );
}

export const verdict = defineFunction({
  id: "VERDICT",
  category: "Threshold and top-up",
  summary:
    "Judges a reading: hold, near, top up, above baseline, or re-read at the baseline's temperature where the temperature gap leaves it open.",
  arguments: [
    phReading("reading", "the bath's pH now, 0 to 14.5"),
    baseline,
    drop,
    baselineTemperature,
    judgedTemperature,
    builder,
    waterAlkalinity,
    system,
  ],
  result: {
    excelType: "string",
    dimensionality: "scalar",
    help: '"hold", "near" (within 0.1 above the trigger), "top up", "re-read at N °F", or "above baseline" (by more than 0.05)',
  },
  examples: [
    {
      formula: '=BATH.VERDICT(10.83,11.42,0.5,"25 C","25 C")',
      cells: [10.83, 11.42, 0.5, "25 C", "25 C"],
      result: "top up",
      source: "10.83 is below 11.42 − 0.5; common practice, no source",
    },
    {
      formula: "=BATH.VERDICT(11.1,11.42)",
      cells: [11.1, 11.42],
      result: "hold",
      source: "11.1 is more than 0.1 above 11.42 − 0.5; common practice, no source",
    },
    {
      formula: "=BATH.VERDICT(13.9,11.42)",
      cells: [13.9, 11.42],
      result: "above baseline",
      source: "13.9 for 11.39: more than 0.05 above 11.42; common practice, no source",
    },
  ],
  notes: [
    ...modelNotes,
    "“top up” and “hold” are given only where every builder and way of wearing down agrees; where they do not, the answer is to read again at the baseline's temperature.",
    "“above baseline”: no top-up is due, but no bath gains pH by itself. Look at the typing, then at the meter, then at what was added.",
    "In US units a bare reading temperature is asked about where as °C it would give another verdict and the reading allows it.",
    "Does not know meter drift, mixing or dirt on the electrode.",
  ],
  source:
    "Reading against the trigger of TRIGGER, low and high; the limits of 0.5, 0.1 and 0.05 are common practice, no source.",
  compute: ([reading, baselinePh, fall, from, to, madeOf, alkalinity], call) => {
    const temperatures = temperaturePair(from, to);
    const question = { baseline: baselinePh, drop: fall, temperatures, builder: madeOf, alkalinity };
    const judged = verdictOn(reading, question);
    checkScale(reading, judged, question, call);
    return said(judged, question, call);
  },
});
