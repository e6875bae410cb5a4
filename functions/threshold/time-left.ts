import { timeUntilTrigger } from "../../src/core/bath/ph-trend.ts";
import { phReading } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";
import { timedPh, timedReadings, times, trendNotes } from "./timed-readings.ts";

export const timeLeft = defineFunction({
  id: "TIMELEFT",
  category: "Threshold and top-up",
  summary: "Time from the last reading until the pH reaches the trigger if the trend goes on.",
  arguments: [
    times,
    timedPh,
    phReading("trigger", "pH at which a top-up is due (TRIGGER), at the readings' temperature"),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "unit of the times: days for dates, hours for hours",
    help: "time left; 0 at or below the trigger",
  },
  examples: [
    {
      formula: "=BATH.TIMELEFT({8;10;12;14},{11.52;11.45;11.38;11.31},11.1)",
      cells: [[[8], [10], [12], [14]], [[11.52], [11.45], [11.38], [11.31]], 11.1],
      result: 6,
      tolerance: 1e-9,
      source: "by hand: 0.21 above the trigger, falling by 0.07 in two hours",
    },
  ],
  notes: [
    ...trendNotes,
    "#N/A with fewer than four readings, or where the pH does not fall. Of dates it is a number of days: times 24 gives hours.",
    "Counts from the latest reading, not from now, and takes nights like working hours. Soil does not arrive evenly: read before you rely on it.",
  ],
  source: "(last reading − trigger) / |PHTREND|.",
  compute: ([at, readings, trigger]) => timeUntilTrigger(timedReadings(at, readings), trigger),
});
