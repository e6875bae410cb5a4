import { hardnessClass } from "../../../../functions/water/hardness-class.ts";
import { call } from "../../formula/calls.ts";
import { blankIf } from "../../formula/choices.ts";
import { isBlank } from "../../formula/conditions.ts";
import { inMilligrams } from "../../formula/in-milligrams.ts";
import { columnsOf, dateInput, moneyInput, nameInput, numberInput, textInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import {
  between,
  dissolvedSolids,
  hardness,
  moneyLimits,
  phLimits,
  priceByVolume,
  waterAlkalinity,
} from "../../model/units-of.ts";

const { computed } = columnsOf<"waters">();

/** No supply is harder, and functions take no more. */
const hardnessLimits = between(0, 2000);
const alkalinityLimits = between(0, 5000);

export const watersTable: TableDefinition = {
  id: "waters",
  name: "Waters",
  caption: "Waters: a softener removes hardness but not alkalinity, so test both",
  emptyRows: 4,
  columns: [
    nameInput({ id: "water", label: "Water", width: 13, help: "Short code that every fill and make-up names." }),
    textInput({ id: "name", label: "Description", width: 14, help: "Where it comes from." }),
    numberInput({
      id: "hardness",
      label: "Hardness",
      unit: hardness,
      limits: hardnessLimits,
      format: "0",
      width: 11,
      help: 'Total hardness. A test in grains: 18 gpg is 308 mg/L; the pane converts it where it is written "18 gpg".',
    }),
    numberInput({
      id: "alkalinity",
      label: "Alkalinity",
      unit: waterAlkalinity,
      limits: alkalinityLimits,
      format: "0",
      width: 11,
      help: "Total alkalinity; 1 meq/L is 50 mg/L. It uses up concentrate one for one.",
    }),
    numberInput({
      id: "tds",
      label: "Dissolved solids",
      unit: dissolvedSolids,
      limits: between(0, 50_000),
      format: "0",
      width: 11,
      help: "TDS, if measured.",
    }),
    numberInput({
      id: "ph",
      label: "pH",
      limits: phLimits,
      format: "0.0#",
      width: 11,
      help: "pH of the water itself.",
    }),
    dateInput({ id: "tested", label: "Tested", width: 11, help: "Day of the test." }),
    {
      ...moneyInput({
        id: "price",
        label: "Price",
        width: 11,
        limits: moneyLimits,
        help: "Cost of the water, if it is charged to claims.",
      }),
      unit: priceByVolume,
      format: "0.000#",
    },
    computed(
      {
        id: "hardnessClass",
        label: "Hardness class",
        type: "text",
        width: 12,
        help: "In words, by the US Geological Survey's classes.",
      },
      (water) => blankIf([isBlank(water.hardness)], call(hardnessClass, { hardness: inMilligrams(water.hardness) })),
    ),
  ],
};
