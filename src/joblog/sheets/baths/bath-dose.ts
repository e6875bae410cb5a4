import { alkalinityDose } from "../../../../functions/charge/alkalinity-dose.ts";
import { dose } from "../../../../functions/charge/dose.ts";
import { hardnessDose } from "../../../../functions/charge/hardness-dose.ts";
import { dividedBy, joined, minus, plus, rounded, sum, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, isAtMost, isBlank, isOver, isUnder } from "../../formula/conditions.ts";
import { sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { inMilligrams } from "../../formula/in-milligrams.ts";
import type { Row } from "../../formula/log-names.ts";
import { cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { hardness, volume, waterAlkalinity } from "../../model/units-of.ts";
import { labelCheck, waterNotTested } from "../../model/words.ts";

const { computed } = columnsOf<"baths">();

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

function extraDose(row: Row<"baths">, { tested, figure, figureMissing, extra }: Extra): Expression {
  return blankIf(
    [isBlank(row.workingVolume), isBlank(row.waterRow), isBlank(row.concentrateRow)],
    when(isBlank(tested), waterNotTested)
      .when(equal(tested, 0), 0)
      .when(any(isBlank(figure), equal(figure, 0)), figureMissing)
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
    (bath, { concentrates, named }) => {
      const { capacity, labelHardness } = rowAt(concentrates, bath.concentrateRow);
      const extra = call(hardnessDose, {
        volume: bath.workingVolume,
        hardness: inMilligrams(bath.hardness),
        capacity,
        label_hardness: inMilligrams(labelHardness),
        system: named.unitSystem,
      });
      return extraDose(bath, { tested: bath.hardness, figure: capacity, figureMissing: "capacity not known", extra });
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
    (bath, { concentrates, named }) => {
      const { alkalinityStrength } = rowAt(concentrates, bath.concentrateRow);
      const extra = call(alkalinityDose, {
        volume: bath.workingVolume,
        alkalinity: inMilligrams(bath.alkalinity),
        strength_eq_L: alkalinityStrength,
        system: named.unitSystem,
      });
      return extraDose(bath, {
        tested: bath.alkalinity,
        figure: alkalinityStrength,
        figureMissing: "strength not known",
        extra,
      });
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
    ({ bath, openingDose, workingVolume }, { additions }) => {
      const water = sumWhere(additions, "amount", { bath, kind: "water", purpose: "opening" });
      const notLogged = isUnder(water, dividedBy(sum(workingVolume), 2));
      return blankIf(
        [isBlank(openingDose)],
        when(equal(water, 0), workingVolume).when(notLogged, workingVolume).otherwise(plus(water, openingDose)),
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
    (bath) => {
      const most = times(bath.labelHighest, bath.workingVolume, aboveRounding);
      const extras = sum(bath.hardnessDose, bath.alkalinityDose);
      return blankIf(
        [isBlank(bath.labelHighest), isBlank(bath.baseDose)],
        when(isOver(bath.baseDose, most), labelCheck.wanted)
          .when(isOver(sum(bath.openingDose), times(pouredAmiss, plus(most, extras))), labelCheck.poured)
          .otherwise(labelCheck.within),
      );
    },
  ),
];
