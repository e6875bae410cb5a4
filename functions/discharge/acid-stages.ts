import { acidStages as stagesOf } from "../../src/core/discharge/acid-stages.ts";
import { positiveNumber } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";
import { climbsBack } from "./acid-notes.ts";

const words = [
  "Add slowly to the cooled, mixing bath. Mix, read.",
  "Less if the reading says that less is left. Mix, read again.",
  "Finish in small portions, reading after each. Aerate, then check again.",
] as const;

export const acidStages = defineFunction({
  id: "ACIDSTAGES",
  category: "Discharge",
  summary:
    "Returns a planned amount of acid in stages: 60 %, then 30 %, then the rest in small portions, with a reading after each.",
  arguments: [positiveNumber("amount", "acid for the whole bath, as ACIDFOR or ACIDTO gives it", "any unit")],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "unit of the amount",
    help: "three rows: amount, what to do",
  },
  examples: [
    {
      formula: "=BATH.ACIDSTAGES(10)",
      cells: [10],
      result: [
        [6, words[0]],
        [3, words[1]],
        [1, words[2]],
      ],
      tolerance: 1e-9,
      source: "60 %, 30 % and the rest of 10; common practice, no source",
    },
  ],
  notes: ["The second and third amounts are the plan; what the reading says is left replaces them.", climbsBack],
  source: "0.6 × amount, 0.3 × amount, and what remains; common practice, no source.",
  compute: ([amount]) => stagesOf(amount).map((part, stage) => [part, words[stage] ?? ""]),
});
