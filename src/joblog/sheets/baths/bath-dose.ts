import { alkalinityDose } from "../../../../functions/charge/alkalinity-dose.ts";
import { dose } from "../../../../functions/charge/dose.ts";
import { hardnessDose } from "../../../../functions/charge/hardness-dose.ts";
import { dividedBy, joined, minus, plus, rounded, sum, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isAtMost, isBlank, isOver, isUnder } from "../../formula/conditions.ts";
import { sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { inMilligrams } from "../../formula/in-milligrams.ts";
import type { Row } from "../../formula/log-names.ts";
import { cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, UnitOf } from "../../model/definition.ts";
import { equivalents, hardness, sequestering, volume, waterAlkalinity } from "../../model/units-of.ts";
import { labelCheck, waterNotTested } from "../../model/words.ts";

const { computed, helper } = columnsOf<"baths">();

/** A ratio and a share of one strength differ in the last digits. */
const aboveRounding = 1.001;

/** A jug is read to a few hundredths (common practice, no source). */
const pouredAmiss = 1.02;

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/** What the water takes up, from its test and from what the concentrate's maker says. */
interface Extra {
  readonly tested: Expression;
  readonly figure: Expression;
  readonly figureMissing: string;
  readonly extra: Expression;
}

function extraDose({ extrasKnown }: Row<"baths">, { tested, figure, figureMissing, extra }: Extra): Expression {
  return blankIf(
    [isBlank(extrasKnown)],
    when(isBlank(tested), waterNotTested)
      .when(equal(tested, 0), 0)
      .when(isBlank(figure), figureMissing)
      .otherwise(extra),
  );
}

/** From tank, water and concentrate to the opening dose planned and poured. */
export const bathDose: readonly ComputedColumn[] = [
  computed(
    { id: "workingVolume", label: "Working volume", ...amount, format: "0.00", help: "Of the tank, at the fill line." },
    ({ tankRow }, { tanks }) => cellAtOrBlank(tanks.workingVolume, tankRow),
  ),
  computed(
    {
      id: "hardness",
      label: "Hardness",
      type: "number",
      unit: hardness,
      format: "0",
      width: 11,
      help: "Of the water of the fill.",
    },
    ({ waterRow }, { waters }) => cellAtOrBlank(waters.hardness, waterRow),
  ),
  computed(
    {
      id: "alkalinity",
      label: "Alkalinity",
      type: "number",
      unit: waterAlkalinity,
      format: "0",
      width: 11,
      help: "Of the water of the fill.",
    },
    ({ waterRow }, { waters }) => cellAtOrBlank(waters.alkalinity, waterRow),
  ),
  computed(
    {
      id: "baseDose",
      label: "Base dose",
      ...amount,
      help: "Concentrate for the strength wanted, before the water is looked at.",
    },
    ({ workingVolume, strength }, { named }) =>
      blankIf(
        [isBlank(workingVolume), isBlank(strength)],
        call(dose, { volume: workingVolume, rate: strength, system: named.unitSystem }),
      ),
  ),
  computed(
    {
      id: "hardnessDose",
      label: "Extra for hardness",
      ...amount,
      width: 13,
      help: "Concentrate that hardness above the label's takes up.",
    },
    (bath, { named }) => {
      const { hardness: tested, hardnessCapacity } = bath;
      const extra = call(hardnessDose, {
        volume: bath.workingVolume,
        hardness: bath.hardnessUsed,
        capacity: hardnessCapacity,
        label_hardness: bath.labelHardness,
        system: named.unitSystem,
      });
      return extraDose(bath, { tested, figure: hardnessCapacity, figureMissing: "capacity not known", extra });
    },
  ),
  computed(
    {
      id: "alkalinityDose",
      label: "Extra for alkalinity",
      ...amount,
      width: 13,
      help: "Concentrate that the water's bicarbonate uses up.",
    },
    (bath, { named }) => {
      const { alkalinity: tested, alkaliStrength } = bath;
      const extra = call(alkalinityDose, {
        volume: bath.workingVolume,
        alkalinity: bath.alkalinityUsed,
        strength_eq_L: alkaliStrength,
        system: named.unitSystem,
      });
      return extraDose(bath, { tested, figure: alkaliStrength, figureMissing: "strength not known", extra });
    },
  ),
  computed(
    {
      id: "plannedDose",
      label: "Planned dose",
      ...amount,
      help: "Base dose and those extras that could be worked out; where an extra is in words, it is not in here.",
    },
    (bath) => blankIf([isBlank(bath.baseDose)], sum(bath.baseDose, bath.hardnessDose, bath.alkalinityDose)),
  ),
  computed(
    {
      id: "openingDose",
      label: "Opening dose added",
      ...amount,
      help: "Concentrate logged under Additions as opening.",
    },
    ({ bath }, { additions }) => {
      const added = sumWhere(additions, "amount", { bath, kind: "concentrate", purpose: "opening" });
      return blankIf([isBlank(bath)], blankIf([equal(added, 0)], added));
    },
  ),
  computed(
    {
      id: "filledVolume",
      label: "Volume of the fill",
      ...amount,
      format: "0.00",
      help: "Water and concentrate logged as opening; the working volume where less than half of it is logged as water.",
    },
    ({ openingDose, openingWater, workingVolume }) => {
      const notLogged = isUnder(openingWater, dividedBy(sum(workingVolume), 2));
      return blankIf(
        [isBlank(openingDose)],
        when(equal(openingWater, 0), workingVolume)
          .when(notLogged, workingVolume)
          .otherwise(plus(openingWater, openingDose)),
      );
    },
  ),
  computed(
    {
      id: "strengthReached",
      label: "Strength reached",
      type: "text",
      width: 10,
      help: "Opening dose in the volume of the fill, as 1+N.",
    },
    ({ openingDose, filledVolume }) =>
      blankIf(
        [isBlank(openingDose), isBlank(filledVolume)],
        when(isAtMost(filledVolume, openingDose), "more than the fill: check").otherwise(
          joined("1+", rounded(dividedBy(minus(filledVolume, openingDose), openingDose), 1)),
        ),
      ),
  ),
  computed(
    {
      id: "labelCheck",
      label: "Against the label",
      type: "text",
      words: Object.values(labelCheck),
      width: 20,
      help: "Strength wanted, and what was poured less the extras for the water, against the strongest that the concentrate's label names. The label wins.",
    },
    ({ baseDose, openingDose, mostByLabel, mostPoured }) =>
      blankIf(
        [isBlank(mostByLabel), isBlank(baseDose)],
        when(isOver(baseDose, mostByLabel), labelCheck.wanted)
          .when(isOver(sum(openingDose), mostPoured), labelCheck.poured)
          .otherwise(labelCheck.within),
      ),
  ),
];

/** A figure of the bath's concentrate; blank where it is not known or 0. */
function ofConcentrate(
  id: string,
  column: "capacity" | "alkalinityStrength",
  rest: Readonly<Record<"label" | "format" | "help", string>> & { readonly unit: UnitOf },
): ComputedColumn {
  return helper({ id, type: "number", width: 9, ...rest }, ({ concentrateRow }, { concentrates }) => {
    const figure = rowAt(concentrates, concentrateRow)[column];
    return blankIf([isBlank(concentrateRow)], blankIf([isBlank(figure), equal(figure, 0)], figure));
  });
}

/** What the doses are worked out from. */
export const bathDoseHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "extrasKnown",
      label: "Tank, water, concentrate",
      type: "whole number",
      format: "0",
      width: 11,
      help: "1 where all three are on the Job sheet.",
    },
    ({ workingVolume, waterRow, concentrateRow }) =>
      blankIf([isBlank(workingVolume), isBlank(waterRow), isBlank(concentrateRow)], 1),
  ),
  // A function that takes it for blank reckons with any usual water.
  helper(
    { id: "alkalinityUsed", label: "Alkalinity used", type: "text", width: 10, help: "Of the water, with its unit." },
    ({ alkalinity }) => blankIf([isBlank(alkalinity)], inMilligrams(alkalinity)),
  ),
  helper(
    { id: "hardnessUsed", label: "Hardness used", type: "text", width: 10, help: "Of the water, with its unit." },
    ({ hardness: tested }) => blankIf([isBlank(tested)], inMilligrams(tested)),
  ),
  helper(
    {
      id: "labelHardness",
      label: "Label's hardness",
      type: "text",
      width: 10,
      help: "What the concentrate's label covers, with its unit; blank where it says nothing.",
    },
    ({ labelCovers }) => blankIf([isBlank(labelCovers)], inMilligrams(labelCovers)),
  ),
  helper(
    {
      id: "labelCovers",
      label: "Label covers",
      type: "number",
      unit: hardness,
      format: "0",
      width: 10,
      help: "The hardness that the concentrate's label covers.",
    },
    ({ concentrateRow }, { concentrates }) => cellAtOrBlank(concentrates.labelHardness, concentrateRow),
  ),
  ofConcentrate("hardnessCapacity", "capacity", {
    label: "Capacity used",
    unit: sequestering,
    format: "0.0#",
    help: "Hardness that the concentrate ties up.",
  }),
  ofConcentrate("alkaliStrength", "alkalinityStrength", {
    label: "Alkali strength used",
    unit: equivalents,
    format: "0.000",
    help: "Of the concentrate.",
  }),
  helper(
    {
      id: "openingWater",
      label: "Opening water",
      ...amount,
      help: "Water logged under Additions as opening; 0 for none.",
    },
    ({ bath }, { additions }) =>
      blankIf([isBlank(bath)], sumWhere(additions, "amount", { bath, kind: "water", purpose: "opening" })),
  ),
  helper(
    {
      id: "mostPoured",
      label: "Most to pour",
      ...amount,
      help: "That and the extras for the water, and what a jug is read amiss.",
    },
    ({ mostByLabel, hardnessDose: forHardness, alkalinityDose: forAlkalinity }) =>
      blankIf([isBlank(mostByLabel)], times(pouredAmiss, plus(mostByLabel, sum(forHardness, forAlkalinity)))),
  ),
  helper(
    {
      id: "mostByLabel",
      label: "Most by the label",
      ...amount,
      help: "The label's highest strength in the working volume, with room for rounding.",
    },
    ({ labelHighest, workingVolume }) =>
      blankIf([isBlank(labelHighest), isBlank(workingVolume)], times(labelHighest, workingVolume, aboveRounding)),
  ),
];
