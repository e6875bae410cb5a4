import { trigger } from "../../src/core/bath/trigger.ts";
import { checkWithin } from "../../src/core/limits/domain.ts";
import { bathTemperature } from "../../src/core/limits/domains.ts";
import { positiveNumber, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { inSystem } from "../arguments/in-system.ts";
import { linesOfTable } from "../arguments/list-arguments.ts";
import { quantity, quantityList } from "../arguments/quantity-argument.ts";
import { baseline, waterAlkalinity } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";
import { modelNotes } from "../top-up/model-notes.ts";

export const triggerCard = defineFunction({
  id: "TRIGGERCARD",
  category: "Threshold and top-up",
  summary: "Returns a table with the trigger at each temperature: the card taped to the tank.",
  arguments: [
    baseline,
    positiveNumber("drop", "fall in pH at which a top-up is due, such as 0.5 (common practice, no source)", "pH"),
    quantity("baseline_temperature", {
      kind: "temperature",
      help: "temperature at which the baseline was read",
      ofSample: true,
    }),
    linesOfTable(
      quantityList("temperatures", {
        kind: "temperature",
        help: "column or row of temperatures for the card; blanks and a header on top are skipped",
        ofSample: true,
      }),
    ),
    builder,
    waterAlkalinity,
    system,
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "temperature in the unit of the system, then pH",
    help: "one row for each temperature: temperature, trigger",
  },
  examples: [
    {
      formula: '=BATH.TRIGGERCARD(11.42,0.5,"25 C",{25;50;60},"hydroxide","0 mg/L","metric")',
      cells: [11.42, 0.5, "25 C", [[25], [50], [60]], "hydroxide", "0 mg/L", "metric"],
      result: [
        [25, 10.92],
        [50, 10.189],
        [60, 9.959],
      ],
      tolerance: 0.02,
      source: "10.92 + pKw − 13.995 with pKw 13.264 at 50 °C (IAPWS R11-07) and 13.034 at 60 °C (CRC Handbook)",
    },
  ],
  notes: [
    ...modelNotes,
    "Shows best figures; VERDICT asks for a second reading where builders disagree. Make a new card for every baseline.",
  ],
  source: "TRIGGER at each temperature.",
  compute: ([baselinePh, fall, from, temperatures, madeOf, alkalinity], call) =>
    temperatures.map((reading) => {
      checkWithin("one of the temperatures", reading, bathTemperature);
      const due = trigger({
        baseline: baselinePh,
        drop: fall,
        temperatures: { baseline: from, reading },
        builder: madeOf,
        alkalinity,
      });
      return [inSystem("temperature", reading, call), due.best];
    }),
});
