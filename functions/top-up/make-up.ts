import { levelMakeUp } from "../../src/core/bath/level-make-up.ts";
import type { VolumeFraction } from "../../src/core/units/quantity.ts";
import { optionalNumber, positiveNumber } from "../arguments/arguments.ts";
import { numberOrNone } from "../arguments/number-or-none.ts";
import { isBlankOrZero, singleCell } from "../arguments/read-cell.ts";
import { reachedStrength } from "../arguments/strength-argument.ts";
import type { Argument } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

const bathRate = reachedStrength(
  "rate",
  "the bath's strength, written as in DOSE, such as 1+40; needed wherever something was dragged out or drained",
);

const rate: Argument<VolumeFraction | undefined, "rate"> = {
  ...bathRate,
  optional: true,
  read: (input, call) => (isBlankOrZero(singleCell(bathRate.name, input)) ? undefined : bathRate.read(input, call)),
};

export const makeUp = defineFunction({
  id: "MAKEUP",
  category: "Threshold and top-up",
  summary:
    "Returns how a drop in level divides: evaporated, dragged out and drained, and the concentrate to add with the make-up water.",
  arguments: [
    positiveNumber(
      "level_loss",
      "volume that the level fell by since it stood at the line: TANKVOLUME of the fall",
      "any unit of volume",
    ),
    numberOrNone("loads", "loads since then; 0 or blank: none", "count"),
    numberOrNone("drag_out_per_load", "solution that one load carries out", "same unit"),
    optionalNumber("drained", "solution drained, spilled or filtered off; none if left out", "same unit", 0),
    rate,
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "unit of the level loss",
    help: "one row: evaporated, dragged out and drained, concentrate to add",
  },
  examples: [
    {
      formula: '=BATH.MAKEUP(6,10,0.18,1,"1+27")',
      cells: [6, 10, 0.18, 1, "1+27"],
      result: [[3.2, 2.8, 0.1]],
      tolerance: 1e-9,
      source: "by hand: 10 × 0.18 + 1 = 2.8 of solution, 6 − 2.8 of water, and 2.8/28 of concentrate",
    },
    {
      formula: "=BATH.MAKEUP(5.49,0,0)",
      cells: [5.49, 0, 0],
      result: [[5.49, 0, 0]],
      tolerance: 1e-9,
      source: "by definition: a night without loads takes water only",
    },
  ],
  notes: [
    "Read the level and the pH before water goes in. The water to add is the level loss minus the concentrate.",
    "Brings back what was carried out, not what soil used up: judge that by a reading after mixing (TOPUP). Use the make-up water that the bath was made with; hard water eats concentrate.",
    "Weigh or meter a few loads for the drag-out per load: it decides the split. Where a little more was carried out than the level fell, nothing evaporated; more than half as much again is refused as a contradiction (common practice, no source).",
    "Does not know the label's highest strength; the label wins.",
  ],
  source:
    "Dragged out and drained = loads × drag-out + drained; evaporated = level loss − that; concentrate = that × strength.",
  compute: ([levelLoss, loads, dragOutPerLoad, drained, strength]) => {
    const { evaporated, carriedOut, concentrate } = levelMakeUp(
      { levelLoss, loads, dragOutPerLoad, drained },
      strength,
    );
    return [[evaporated, carriedOut, concentrate]];
  },
});
