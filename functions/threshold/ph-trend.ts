import { phTrend as trendOf } from "../../src/core/bath/ph-trend.ts";
import { defineFunction } from "../define-function.ts";
import { timedPh, timedReadings, times, trendNotes } from "./timed-readings.ts";

export const phTrend = defineFunction({
  id: "PHTREND",
  category: "Threshold and top-up",
  summary:
    "Change of pH per unit of time: the median slope of all pairs of readings, which one wild reading does not sway.",
  arguments: [times, timedPh],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "pH per unit of the times: per day for dates, per hour for hours",
    help: "below 0 where the pH falls",
  },
  examples: [
    {
      formula: "=BATH.PHTREND({1;2;3;4;5;6},{2;3;5;4;6;8})",
      cells: [
        [[1], [2], [3], [4], [5], [6]],
        [[2], [3], [5], [4], [6], [8]],
      ],
      result: 1,
      tolerance: 1e-6,
      source: "by hand: the median of 15 pairwise slopes",
    },
    {
      formula: "=BATH.PHTREND({1;2;3;5;6},{6;4;1;8;7})",
      cells: [
        [[1], [2], [3], [5], [6]],
        [[6], [4], [1], [8], [7]],
      ],
      result: 0.35,
      tolerance: 1e-6,
      source: "slope computed with scipy.stats.theilslopes",
    },
  ],
  notes: [
    ...trendNotes,
    "Does not say how sure the slope is: under four readings it says little. #N/A without two different times.",
  ],
  source:
    "Median of (reading 2 − reading 1) / (time 2 − time 1) over all pairs with different times; USGS TM4-A3, chapter 10.",
  compute: ([at, readings]) => trendOf(timedReadings(at, readings)),
});
