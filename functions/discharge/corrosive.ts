import { corrosive as isCorrosive } from "../../src/core/discharge/corrosive.ts";
import { phReading } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";

export const corrosive = defineFunction({
  id: "CORROSIVE",
  category: "Discharge",
  summary:
    "TRUE where the pH makes a watery waste corrosive hazardous waste in US federal law (D002): 2 and less, or 12.5 and more.",
  arguments: [phReading("ph", "pH of the waste, measured at 25 °C")],
  result: { excelType: "boolean", dimensionality: "scalar", help: "TRUE or FALSE" },
  examples: [
    { formula: "=BATH.CORROSIVE(2)", cells: [2], result: true, source: "40 CFR 261.22(a)(1): 2 itself counts" },
    { formula: "=BATH.CORROSIVE(12.49)", cells: [12.49], result: false, source: "40 CFR 261.22(a)(1): from 12.5" },
  ],
  notes: [
    "FALSE does not say that a waste is not hazardous: lead, cadmium and other metals (40 CFR 261.24), ignitability and state law are judged apart, and it is no permission to release.",
    "Near 12.5 measure at 25 °C with a buffer above pH 12 (EPA Method 9040C): a hot sample reads lower, and so does an ordinary electrode. Less than 0.1 from a limit no meter decides; treat it as TRUE.",
    "Neat concentrate is often corrosive although the bath is not. Never thin a corrosive waste to get below the limit without asking the authority.",
  ],
  source: "40 CFR 261.22(a)(1): pH ≤ 2 or ≥ 12.5.",
  compute: ([reading]) => isCorrosive(reading),
});
