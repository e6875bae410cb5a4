import { recovery } from "../../src/core/bath/recovery.ts";
import { phReading } from "../arguments/arguments.ts";
import { baseline, tolerance } from "../arguments/shared-arguments.ts";
import { defineFunction } from "../define-function.ts";

export const recovered = defineFunction({
  id: "RECOVERED",
  category: "Threshold and top-up",
  summary: "Says whether a bath came back to its baseline after an addition: recovered, short or over.",
  arguments: [
    phReading("after", "pH after the addition was mixed in, at the baseline's temperature"),
    baseline,
    tolerance,
  ],
  result: { excelType: "string", dimensionality: "scalar", help: '"recovered", "short" or "over"' },
  examples: [
    {
      formula: "=BATH.RECOVERED(11.33,11.42)",
      cells: [11.33, 11.42],
      result: "recovered",
      source: "within 0.1; common practice, no source",
    },
    {
      formula: "=BATH.RECOVERED(11.1,11.42)",
      cells: [11.1, 11.42],
      result: "short",
      source: "0.32 below; common practice, no source",
    },
  ],
  notes: ["Does not know temperature, mixing or meter drift: read at the baseline's temperature."],
  source: "Difference of the two readings against the tolerance.",
  compute: ([after, baselinePh, within]) => recovery(after, baselinePh, within),
});
