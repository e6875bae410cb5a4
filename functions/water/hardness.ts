import { DomainError } from "../../src/core/limits/domain-error.ts";
import type { KilogramsPerCubicMeter } from "../../src/core/units/quantity.ts";
import { kilogramsPerCubicMeter } from "../../src/core/units/quantity.ts";
import { hardnessFromIons } from "../../src/core/water/hardness-from-ions.ts";
import { inUnit } from "../arguments/in-system.ts";
import { optionalQuantity } from "../arguments/quantity-argument.ts";
import type { Argument } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

/** Each ion may be none, but not both: two blanks are not a soft water. */
function ion<const Name extends string>(name: Name, help: string): Argument<KilogramsPerCubicMeter | undefined, Name> {
  return { ...optionalQuantity(name, { kind: "amount per volume", help, bareUnit: "mg/L" }), optional: false };
}

export const hardness = defineFunction({
  id: "HARDNESS",
  category: "Water",
  summary: "Total hardness as calcium carbonate from calcium and magnesium.",
  arguments: [ion("calcium", "calcium as the ion; 0 if none"), ion("magnesium", "magnesium as the ion; 0 if none")],
  result: { excelType: "number", dimensionality: "scalar", unit: "mg/L as CaCO3", help: "total hardness" },
  examples: [
    {
      formula: "=BATH.HARDNESS(50,10)",
      cells: [50, 10],
      result: 166.0447,
      tolerance: 0.05,
      source: "Standard Methods 2340 B, 2.497 × Ca + 4.118 × Mg",
    },
  ],
  notes: [
    'A result of 50 or less goes on with its unit, as in HARDNESSCLASS(HARDNESS(10,3)&" mg/L").',
    "Does not count iron, strontium or zinc, which a titration counts too.",
    "One ion left blank counts as none, since Excel may hand a blank over as 0: check that the report gives both. Refused where both are blank or 0.",
  ],
  source: "Standard Methods 2340 B: calcium / 40.078 + magnesium / 24.305, times 100.0869.",
  compute: ([calcium, magnesium]) => {
    if (calcium === undefined && magnesium === undefined) {
      throw new DomainError("invalid", "Calcium and magnesium are both blank or 0.");
    }
    const none = kilogramsPerCubicMeter(0);
    return inUnit("hardness", hardnessFromIons(calcium ?? none, magnesium ?? none), "mg/L CaCO3");
  },
});
