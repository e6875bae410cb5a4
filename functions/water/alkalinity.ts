import { titratedAlkalinity } from "../../src/core/water/titrated-alkalinity.ts";
import { inUnit } from "../arguments/in-system.ts";
import { quantity, quantityOrWrittenZero } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";

export const alkalinity = defineFunction({
  id: "ALKALINITY",
  category: "Water",
  summary: "Alkalinity of a water or bath from a titration with acid, as calcium carbonate.",
  arguments: [
    quantityOrWrittenZero("titrant_mL", {
      kind: "volume",
      help: "acid used to the end point: pH 8.3 for P, 4.5 for total",
      bareUnit: "mL",
    }),
    quantity("normality", { kind: "alkalinity", help: "strength of the acid, such as 0.02", bareUnit: "eq/L" }),
    quantity("sample_mL", {
      kind: "volume",
      help: "sample titrated, before any water was added to it",
      bareUnit: "mL",
    }),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "mg/L as CaCO3",
    help: "alkalinity to the end point of the titration",
  },
  examples: [
    {
      formula: "=BATH.ALKALINITY(10,0.02,100)",
      cells: [10, 0.02, 100],
      result: 100,
      tolerance: 0.1,
      source: "Standard Methods 2320 B, mL × N × 50,000 / mL of sample; the tolerance covers its rounding of 50,043",
    },
    {
      formula: "=BATH.ALKALINITY(8.4,0.1,10)",
      cells: [8.4, 0.1, 10],
      result: 4203.65,
      tolerance: 0.01,
      source:
        "0.084 eq/L by mL × N / mL of sample (mptc.saitechlabs.com, chemistry notes on degreasing); 50,043.45 mg of CaCO3 per equivalent",
    },
  ],
  notes: [
    "Does not know the end point: pH 8.3 gives P (free), 4.5 gives total. In a used bath silicate, phosphate and soap from soil count too.",
    'A result of 20 or less goes on with its unit: ALKALINITY(0.9,0.02,100)&" mg/L".',
    "Titrate a sample, never the tank. The acid burns too: its SDS wins.",
  ],
  source:
    "Titrant × normality / sample (Standard Methods 2320 B). 1 eq/L is 50,043 mg/L as CaCO3, which the method rounds to 50,000.",
  compute: ([titrant, normality, sample]) =>
    inUnit("alkalinity", titratedAlkalinity(titrant, normality, sample), "mg/L CaCO3"),
});
