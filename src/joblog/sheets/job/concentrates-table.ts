import { dose } from "../../../../functions/charge/dose.ts";
import { dividedBy, largest, plus } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, isAtMost, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import { columnsOf, moneyInput, nameInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import {
  between,
  density,
  equivalents,
  hardness,
  moneyLimits,
  priceByVolume,
  sequestering,
  volume,
  volumeLimits,
} from "../../model/units-of.ts";
import { builders, labelCheck, yesNo } from "../../model/words.ts";

const { computed, helper } = columnsOf<"concentrates">();

/** The sheet of paper is full. */
const onScreen: typeof computed = (rest, formula) => ({ ...computed(rest, formula), unprinted: true });

/** A strength of the label as a share of the bath. */
function shareOf(id: string, label: string, strength: "labelLight" | "labelMedium" | "labelHeavy"): ComputedColumn {
  return helper(
    {
      id,
      label,
      type: "share",
      format: "0.00%",
      width: 9,
      help: "Of the finished bath; 0 where the label's is not here.",
    },
    (row, { named }) =>
      blankIf(
        [isBlank(row.concentrate)],
        when(isBlank(row[strength]), 0).otherwise(
          call(dose, { volume: 1, rate: row[strength], system: named.unitSystem }),
        ),
      ),
  );
}

export const concentratesTable: TableDefinition = {
  id: "concentrates",
  name: "Concentrates",
  caption: "Cleaner concentrates: copy from the label and the SDS",
  emptyRows: 3,
  columns: [
    nameInput({ id: "concentrate", label: "Concentrate", width: 13, help: "Short code that every bath names." }),
    textInput({ id: "description", label: "Description", width: 14, help: "Name on the label." }),
    wordInput({
      id: "builder",
      label: "Builder",
      words: builders,
      width: 11,
      help: "What makes it alkaline, from the SDS. Unknown gives wider ranges.",
    }),
    textInput({
      id: "labelLight",
      label: "Strength, light soil",
      width: 11,
      help: "As the label says it, written 1+40, 2.5% or 3 fl oz/gal.",
    }),
    textInput({ id: "labelMedium", label: "Strength, medium soil", width: 11, help: "As the label says it." }),
    textInput({ id: "labelHeavy", label: "Strength, heavy soil", width: 11, help: "As the label says it." }),
    numberInput({
      id: "labelHardness",
      label: "Label covers hardness to",
      unit: hardness,
      limits: between(0, 2000),
      format: "0",
      width: 14,
      help: "Water hardness that the label's strength already allows for.",
    }),
    numberInput({
      id: "density",
      label: "Density",
      unit: density,
      limits: between(0.5, 2.5),
      format: "0.00#",
      width: 9,
      help: "From the SDS, section 9.",
    }),
    numberInput({
      id: "capacity",
      label: "Hardness capacity",
      unit: sequestering,
      limits: between(0, 1000),
      format: "0.0#",
      width: 14,
      help: "How much hardness 1 mL of concentrate can tie up, from the maker.",
    }),
    numberInput({
      id: "alkalinityStrength",
      label: "Alkali strength",
      unit: equivalents,
      limits: between(0, 25),
      format: "0.000",
      width: 9,
      help: "Titrated alkalinity of the concentrate itself.",
    }),
    numberInput({
      id: "packVolume",
      label: "Pack size",
      unit: volume,
      limits: volumeLimits,
      format: "0.0##",
      width: 9,
      help: "Volume in one pack.",
    }),
    moneyInput({ id: "packPrice", label: "Pack price", width: 8, limits: moneyLimits, help: "What one pack cost." }),
    { ...textInput({ id: "lot", label: "Lot", width: 9, help: "From the pack, for the file." }), unprinted: true },
    {
      ...wordInput({
        id: "sdsOnFile",
        label: "SDS on file",
        words: yesNo,
        width: 7,
        help: "A current safety data sheet is at hand on every shift.",
      }),
      unprinted: true,
    },
    onScreen(
      {
        id: "unitPrice",
        label: "Concentrate price",
        type: "money",
        unit: priceByVolume,
        format: "#,##0.00",
        width: 11,
        help: "Pack price divided by pack size.",
      },
      ({ packVolume, packPrice }) =>
        blankIf(
          [isNoNumber(packVolume), isNoNumber(packPrice)],
          when(isAtMost(packVolume, 0), "").otherwise(dividedBy(packPrice, packVolume)),
        ),
    ),
    onScreen(
      {
        id: "labelHighest",
        label: "Label's highest strength",
        type: "share",
        format: "0.00%",
        width: 11,
        help: "The strongest that the label names for any soil, as a share of the finished bath. The label wins.",
      },
      ({ labelLight, labelMedium, labelHeavy, lightShare, mediumShare, heavyShare }) =>
        blankIf(
          [all(isBlank(labelLight), isBlank(labelMedium), isBlank(labelHeavy))],
          largest(lightShare, mediumShare, heavyShare),
        ),
    ),
    onScreen(
      {
        id: "bathsAboveLabel",
        label: "Baths above the label",
        type: "whole number",
        format: "0",
        width: 9,
        help: "How many baths were wanted or made stronger than the label's highest; Baths says which.",
      },
      ({ concentrate, labelHighest }, { baths }) =>
        blankIf(
          [isBlank(labelHighest)],
          plus(
            countWhere(baths, { concentrate, labelCheck: labelCheck.wanted }),
            countWhere(baths, { concentrate, labelCheck: labelCheck.poured }),
          ),
        ),
    ),
    shareOf("lightShare", "Light, share", "labelLight"),
    shareOf("mediumShare", "Medium, share", "labelMedium"),
    shareOf("heavyShare", "Heavy, share", "labelHeavy"),
  ],
  signals: [
    { column: "bathsAboveLabel", when: { isNot: 0 }, look: "act" },
    { column: "sdsOnFile", when: { is: "no" }, look: "act" },
  ],
};
