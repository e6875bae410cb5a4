import { corrosive as isCorrosive } from "../../src/core/discharge/corrosive.ts";
import { meterDoubt } from "../../src/core/limits/legal-limits.ts";
import { optionalNumber, phReading } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";

export const corrosive = defineFunction({
  id: "CORROSIVE",
  category: "Discharge",
  summary:
    "TRUE where the pH makes an aqueous (liquid) waste corrosive hazardous waste in US federal law (D002), 2 and less or 12.5 and more, or lies so near that no meter decides.",
  arguments: [
    phReading("ph", "pH of the waste, measured at 25 °C"),
    optionalNumber(
      "margin",
      "how near to a limit counts as over it; 0.1 if left out, nearer than which no meter decides (common practice, no source)",
      "pH",
      meterDoubt,
    ),
  ],
  result: { excelType: "boolean", dimensionality: "scalar", help: "TRUE or FALSE" },
  examples: [
    { formula: "=BATH.CORROSIVE(2)", cells: [2], result: true, source: "40 CFR 261.22(a)(1): 2 itself counts" },
    {
      formula: "=BATH.CORROSIVE(12.49,0.001)",
      cells: [12.49, 0.001],
      result: false,
      source: "40 CFR 261.22(a)(1): from 12.5, by a measurement good to 0.001",
    },
    {
      formula: "=BATH.CORROSIVE(12.49)",
      cells: [12.49],
      result: true,
      source: "0.01 from 12.5, which no meter tells apart; common practice, no source",
    },
  ],
  notes: [
    "FALSE does not say that a waste is not hazardous: lead, cadmium and other metals (40 CFR 261.24), ignitability and state law are judged apart, and it is no permission to release.",
    "Near 12.5 measure at 25 °C with a buffer above pH 12 (EPA Method 9040C): a hot sample reads lower, and so does an ordinary electrode. Less than the margin from a limit it is TRUE: no meter decides there.",
    "Undiluted concentrate, if thrown away, often is corrosive although the bath is not. Never dilute a corrosive waste to get under the limit without asking the authority.",
  ],
  source: "40 CFR 261.22(a)(1): pH ≤ 2 or ≥ 12.5; the margin is common practice, no source.",
  compute: ([reading, margin]) => isCorrosive(reading, margin),
});
