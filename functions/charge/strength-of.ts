import { checkStrength } from "../../src/core/bath/label-limit.ts";
import { strengthReached } from "../../src/core/bath/strength-reached.ts";
import { choice } from "../arguments/arguments.ts";
import { inUnit } from "../arguments/in-system.ts";
import { checkAlike, likeVolume } from "../arguments/like-volumes.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import { defineFunction } from "../define-function.ts";

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
    likeVolume("dose", "concentrate in the bath"),
    likeVolume(
      "volume",
      "volume of the finished bath, concentrate included; with a unit where the dose has one, without where it has none",
    ),
    choice("as", "fraction (default), %, parts (N of 1+N), mL/L or fl oz/gal (US)", forms, "fraction"),
    labelHighest,
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
  notes: [
    "Bare numbers must share one unit. A bare number beside a text with a unit is refused: nobody knows its unit.",
    "fl oz/gal means US measures, since this function takes no system.",
    "Give label_highest, and a bath that is stronger than its label is refused (#N/A).",
    "Does not know what the bath has lost since it was charged.",
  ],
  source: "Dose / volume of the finished bath.",
  compute: ([dose, volume, form, highest]) => {
    checkAlike([dose, volume]);
    const strength = strengthReached(dose.volume, volume.volume);
    checkStrength(strength, highest);
    return inUnit("strength", strength, symbols[form]);
  },
});
