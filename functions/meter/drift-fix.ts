import { driftCorrected } from "../../src/core/meter/drift.ts";
import { phReading } from "../arguments/arguments.ts";
import { checkOneClock, time } from "../arguments/time-argument.ts";
import { defineFunction } from "../define-function.ts";
import { asFoundErrors, checksOf, checkTimes } from "./meter-checks.ts";

export const driftFix = defineFunction({
  id: "DRIFTFIX",
  category: "pH and the meter",
  summary:
    "A past reading with the meter's drift taken out: none right after the check before it, growing evenly to what the next check found.",
  arguments: [
    phReading("reading", "pH as the meter showed it"),
    time("when", "when it was read"),
    checkTimes,
    asFoundErrors,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "pH",
    help: "corrected reading; the reading itself before the first check and after the last",
  },
  examples: [
    {
      formula: "=BATH.DRIFTFIX(11,103.3,{48;120.1},{0.02;0.14})",
      cells: [11, 103.3, [[48], [120.1]], [[0.02], [0.14]]],
      result: 10.9,
      tolerance: 0.01,
      source:
        "by hand: 55.3 of 72.1 hours after an adjustment, and the next check found 10.15 in the 10.01 buffer: 0.14 × 55.3 / 72.1 = 0.107 too high",
    },
    {
      formula: "=BATH.DRIFTFIX(10.83,120.3,{48;120.1},{0.02;0.14})",
      cells: [10.83, 120.3, [[48], [120.1]], [[0.02], [0.14]]],
      result: 10.83,
      source: "no check after it yet, so there is nothing to correct by",
    },
  ],
  notes: [
    "A drift is a guess between two checks: a knock or a dirty bulb changes an electrode at once. Readings near a limit that a correction moves over it are to be looked at again.",
    "Takes the meter to be adjusted after every check listed. Of a check without an adjustment, give the error less what the check before it left, or leave the row out.",
    "Before the first check and after the last the reading comes back as it is, which does not say that it is right. A reading at the very time of a check counts as made after it.",
    "Give the checks of one meter only, with the times in one unit. A time of 0 is a blank.",
  ],
  source: "Reading − error of the next check × (when − check before) / (next check − check before).",
  compute: ([reading, when, times, errors]) => {
    const checks = checksOf(times, errors);
    checkOneClock(checkTimes.name, [when, ...checks.map(({ time: checked }) => checked)]);
    return driftCorrected(reading, when, checks);
  },
});
