import { langelierIndex } from "../../src/core/water/langelier-index.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareAlkalinityNotes, bareHardnessNotes } from "./bare-figures.ts";

export const lsi = defineFunction({
  id: "LSI",
  category: "Water",
  summary:
    "Langelier saturation index of a supply or rinse water: above 0 it tends to leave calcium scale, below 0 to dissolve it. Not for a bath.",
  arguments: [
    phReading("ph", "pH of the water, 4.5 to 9.5"),
    quantity("temperature", {
      kind: "temperature",
      help: "temperature where scale would form, such as a rinse heater; 0 to 100 °C",
    }),
    quantity("calcium_hardness", {
      kind: "hardness",
      help: 'hardness of the calcium alone, up to 50 with its unit, such as "9 gpg"; calcium × 2.5',
    }),
    quantity("alkalinity", { kind: "alkalinity", help: "total alkalinity, up to 20 with its unit" }),
    quantity("tds", { kind: "amount per volume", help: "total dissolved solids, 10 to 10,000 mg/L", bareUnit: "mg/L" }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "index, in units of pH",
    help: "pH minus the pH at which the water would be saturated",
  },
  examples: [
    {
      formula: '=BATH.LSI(7.5,"25 C",150,34,320)',
      cells: [7.5, "25 C", 150, 34, 320],
      result: -0.7,
      tolerance: 0.05,
      source: "widely reprinted example: A 0.15, B 2.09, C 1.78, D 1.53",
    },
  ],
  notes: [
    "Meaningless inside a bath: at pH 11 the alkalinity is no longer bicarbonate. SOLUTION gives the saturation index of calcite there.",
    "Tells the tendency, not how much or how fast; within 0.3 of 0 it decides nothing (common practice, no source). Phosphate and scale inhibitors are not known. No measure of corrosion: pipe metals and chloride count too.",
    ...bareHardnessNotes,
    ...bareAlkalinityNotes,
    "Takes the pH as read at the temperature given; the cold pH of a water that is then heated may overstate its index.",
    "Water without calcium or alkalinity has no index.",
  ],
  source:
    "pH − [(9.3 + A + B) − (C + D)]: A = (log10 TDS − 1)/10, B = −13.12 log10(°C + 273.15) + 34.55, C = log10 calcium hardness − 0.4, D = log10 alkalinity, mg/L (Carrier form as widely reprinted; method family of Standard Methods 2330).",
  compute: ([ph, temperature, calciumHardness, alkalinity, dissolvedSolids]) =>
    langelierIndex({ ph, temperature, calciumHardness, alkalinity, dissolvedSolids }),
});
