import { choice } from "../arguments.ts";
import { defineFunction } from "../define-function.ts";
import { inUnit } from "../in-system.ts";
import { quantity } from "../quantity-argument.ts";
import { strengthReached } from "../../src/core/bath/strength-reached.ts";

const forms = ["fraction", "%", "parts", "mL/L", "fl oz/gal"] as const;

/** US measures: this function has no system, and a ratio of US measures is what US labels print. */
const symbols: Readonly<Record<(typeof forms)[number], string>> = {
  fraction: "fraction",
  "%": "%",
  parts: "parts",
  "mL/L": "mL/L",
  "fl oz/gal": "US fl oz/US gal",
};

export const strengthOf = defineFunction({
  id: "STRENGTHOF",
  category: "Charge",
  summary: "Strength that a dose gives in a finished bath.",
  arguments: [
    quantity("dose", { kind: "volume", help: "concentrate in the bath; same unit as volume, or text with a unit" }),
    quantity("volume", { kind: "volume", help: "volume of the finished bath, concentrate included" }),
    choice("as", "fraction (default), %, parts (N of 1+N), mL/L or fl oz/gal (US)", forms, "fraction"),
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "as asked", help: "strength of the finished bath" },
  examples: [
    {
      formula: '=BATH.STRENGTHOF(1,29,"parts")',
      cells: [1, 29, "parts"],
      result: 28,
      tolerance: 1e-9,
      source: "by definition: 1 part in 29 of finished bath is 1+28",
    },
    {
      formula: '=BATH.STRENGTHOF("1 fl oz","1 gal","mL/L")',
      cells: ["1 fl oz", "1 gal", "mL/L"],
      result: 7.8125,
      tolerance: 1e-9,
      source: "128 US fluid ounces to the US gallon by definition",
    },
  ],
  notes: ["Bare numbers must share one unit; a bare number beside a text with a unit is US gallons.", "fl oz/gal means US measures, since this function takes no system.",
    "Does not know what the bath has lost since it was charged."],
  source: "Dose / volume of the finished bath.",
  compute: ([dose, volume, form]) => inUnit("strength", strengthReached(dose, volume), symbols[form]),
});
