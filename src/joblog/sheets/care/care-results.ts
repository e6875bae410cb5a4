import { dividedBy, minus, rounded, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { isBlank, isNoNumber } from "../../formula/conditions.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { bathRow } from "../baths/bath-row.ts";

const { computed } = columnsOf<"care">();

export const careResults: readonly ComputedColumn[] = [
  computed(
    {
      id: "concentrateLost",
      label: "Concentrate lost",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 11,
      help: "What the solution taken out had held, at the strength of the opening dose.",
    },
    ({ bathRow, amount }, { baths }) => {
      const { openingDose, filledVolume } = rowAt(baths, bathRow);
      return blankIf(
        [isBlank(bathRow), isNoNumber(amount)],
        // Without an opening dose there is no volume of the fill either.
        blankIf([isBlank(filledVolume)], dividedBy(times(amount, openingDose), filledVolume)),
      );
    },
  ),
  {
    ...computed(
      {
        id: "aboveWater",
        label: "Rinse above the water, pH",
        type: "number",
        format: "+0.00;-0.00;0.00",
        width: 11,
        help: "Rinse minus the pH of the bath's water: how much alkali the rinse holds. When to dump it is the shop's own rule.",
      },
      ({ bathRow, rinsePh }, { baths, waters }) => {
        const { waterRow } = rowAt(baths, bathRow);
        const water = rowAt(waters, waterRow);
        return blankIf(
          [isBlank(bathRow), isNoNumber(rinsePh)],
          when(isBlank(waterRow), "")
            .when(isNoNumber(water.ph), "")
            .otherwise(rounded(minus(rinsePh, water.ph), 2)),
        );
      },
    ),
    unprinted: true,
  },
  bathRow,
];
