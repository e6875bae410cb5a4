import { nextAdd } from "../../../../functions/top-up/next-add.ts";
import { recovered } from "../../../../functions/top-up/recovered.ts";
import { readingsCompared } from "../../../core/bath/common-practice.ts";
import { liquidVolume } from "../../../core/limits/domains.ts";
import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { minus, rounded, smallest, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { is, isAtMost, isBlank, isNoNumber, isNot } from "../../formula/conditions.ts";
import { sumWhere, upTo } from "../../formula/criteria.ts";
import { positionOf, rowAt } from "../../formula/lookups.ts";
import { columnsOf, keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { ColumnDefinition, SheetDefinition } from "../../model/definition.ts";
import {
  between,
  depth,
  depthLimits,
  minutes,
  moneyLimits,
  phLimits,
  priceByVolume,
  volume,
  volumeLimits,
} from "../../model/units-of.ts";
import { accounts, additionKinds, additionPurposes, recovery, tankRoom } from "../../model/words.ts";
import { baselineAt, baselineColumn } from "../baths/bath-baseline.ts";
import { bathRow } from "../baths/bath-row.ts";
import { additionStatement } from "../statement/statement-keys.ts";
import { additionChartColumns } from "./addition-charts.ts";
import { additionCost, additionCostBasis, additionCostHelpers } from "./addition-costs.ts";
import { additionIssues } from "./addition-issues.ts";
import { additionRoom, additionRoomHelpers } from "./addition-room.ts";
import { additionWater, additionWaterHelpers } from "./addition-water.ts";

const { computed, helper } = columnsOf<"additions">();

const inputs: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Addition", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 13,
    required: true,
    from: ["baths", "bath"],
    help: "The bath it went into.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time." }),
  wordInput({
    id: "kind",
    label: "Kind",
    words: additionKinds,
    width: 15,
    required: true,
    help: "Concentrate or water.",
  }),
  wordInput({
    id: "purpose",
    label: "Purpose",
    words: additionPurposes,
    width: 13,
    required: true,
    help: "Opening dose, top-up, make-up to the line, or corrective.",
  }),
  numberInput({
    id: "amount",
    label: "Amount",
    unit: volume,
    limits: volumeLimits,
    format: "0.000",
    width: 9,
    required: true,
    help: "What really went in.",
  }),
  keyInput({
    id: "water",
    label: "Water",
    width: 8,
    from: ["waters", "water"],
    help: "Which water, for water; blank means the water of the fill.",
  }),
  wordInput({
    id: "account",
    label: "Account",
    words: accounts,
    width: 9,
    help: "The shop's own mistakes go to the shop, never to a claim.",
  }),
  numberInput({
    id: "phBefore",
    label: "pH before",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "Before the addition, at the baseline's temperature.",
  }),
  numberInput({
    id: "phAfter",
    label: "pH after",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "After mixing, at the baseline's temperature.",
  }),
  numberInput({
    id: "minutesMixed",
    label: "Mixed",
    unit: minutes,
    limits: between(0, 600),
    format: "0",
    width: 8,
    help: "Mixing time before the reading after.",
  }),
  numberInput({
    id: "levelBefore",
    label: "Level before",
    unit: depth,
    limits: depthLimits,
    format: "0.0#",
    width: 8,
    help: "Liquid depth before, for level make-up.",
  }),
  numberInput({
    id: "levelAfter",
    label: "Level after",
    unit: depth,
    limits: depthLimits,
    format: "0.0#",
    width: 8,
    help: "Liquid depth after.",
  }),
  {
    ...numberInput({
      id: "unitCost",
      label: "Unit cost",
      limits: moneyLimits,
      format: "0.00####",
      width: 9,
      help: "Average cost on the shelf when it went in, as the pane writes it down. Blank: by the average then, and not settled.",
    }),
    unit: priceByVolume,
  },
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who added it." }),
  textInput({ id: "note", label: "Note", width: 22, help: "Why, and anything odd." }),
];

const results: readonly ColumnDefinition[] = [
  additionCost,
  additionCostBasis,
  computed(
    {
      id: "runningTotal",
      label: "Total of this kind so far",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 12,
      help: "All of this kind that the bath has had by then.",
    },
    (addition, { additions }) => {
      const { bath, bathRow, kind } = addition;
      return blankIf(
        [isBlank(bathRow), isNoNumber(addition.when), isBlank(kind)],
        sumWhere(additions, "amount", { bath, kind, when: upTo(addition.when) }),
      );
    },
  ),
  computed(
    {
      id: "recovery",
      label: "Recovery",
      type: "text",
      words: Object.values(recovery),
      width: 11,
      help: "Whether the reading after came back to the baseline.",
    },
    ({ bathBaseline, kind, purpose, phAfter }, { named }) =>
      blankIf(
        [isBlank(bathBaseline), isNot(kind, "concentrate"), is(purpose, "opening"), isNoNumber(phAfter)],
        call(recovered, { after: phAfter, baseline: bathBaseline, tolerance: named.tolerance }),
      ),
  ),
  computed(
    {
      id: "nextAddition",
      label: "Then add",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 12,
      help:
        "After a short recovery: a further addition, judged from what this one did " +
        "and never more than a first addition. It has no figure where the pH rose by no more than twice what the meter " +
        "may be off. Mix, then read again.",
    },
    ({ amount, phBefore, recovery: cameBack, mostFurther, furtherByPh }) =>
      blankIf(
        [isNot(cameBack, recovery.short), isNoNumber(amount)],
        when(isNoNumber(phBefore), "pH before missing")
          .when(isBlank(furtherByPh), "hardly moved: check meter, temperature, mixing and water")
          .otherwise(smallest(mostFurther, furtherByPh)),
      ),
  ),
];

/** The largest dose that NEXTADD takes: none that a bath was opened with is over it. */
const anyOpeningDose = `${String(liquidVolume.high)} m3`;

/** Depends on cells that somebody typed alone: the opening dose, added up from all rows here, caps it in a cell of its own. */
const furtherByPh: ColumnDefinition = helper(
  {
    id: "furtherByPh",
    label: "Further by the pH",
    type: "number",
    unit: volume,
    format: "0.000",
    width: 9,
    help: "What is still missing by what this addition did; blank where the bath hardly moved.",
  },
  ({ amount, phBefore, phAfter, phRise, bathBaseline, bathRow }, { baths, named }) => {
    const bath = rowAt(baths, bathRow);
    const next = call(nextAdd, {
      added: amount,
      before: phBefore,
      after: phAfter,
      baseline: bathBaseline,
      builder: bath.builderUsed,
      temperature: bath.baselineTemperature,
      alkalinity: bath.alkalinityUsed,
      tolerance: named.tolerance,
      opening_dose: anyOpeningDose,
      house_share: named.houseShare,
      meter_accuracy: named.meterLimit,
      system: named.unitSystem,
    });
    return blankIf([isBlank(phRise)], next);
  },
);

/** What the bath is held to, and how far this addition brought it. */
const recoveryHelpers: readonly ColumnDefinition[] = [
  helper(baselineColumn, ({ bathRow }, log) => baselineAt(bathRow, log)),
  helper(
    {
      id: "phRise",
      label: "Rise",
      type: "number",
      format: "0.00",
      width: 8,
      help: "After a short recovery; blank where it is no more than twice what the meter may be off.",
    },
    ({ amount, phBefore, phAfter, recovery: cameBack }, { named }) => {
      const rise = rounded(minus(phAfter, phBefore), 2);
      const noise = rounded(times(readingsCompared, named.meterLimit), 3);
      return blankIf(
        [isNot(cameBack, recovery.short), isNoNumber(amount), isNoNumber(phBefore)],
        blankIf([isAtMost(rise, noise)], rise),
      );
    },
  ),
  helper(
    {
      id: "mostFurther",
      label: "At most",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 9,
      help: "After a short recovery: the shop's share of the opening dose, or as much again where that is not known.",
    },
    ({ amount, recovery: cameBack, bathRow }, { baths, named }) => {
      const { openingDose } = rowAt(baths, bathRow);
      return blankIf(
        [isNot(cameBack, recovery.short), isNoNumber(amount)],
        when(isBlank(openingDose), amount).otherwise(times(named.houseShare, openingDose)),
      );
    },
  ),
];

const helpers: readonly ColumnDefinition[] = [
  bathRow,
  helper(
    {
      id: "waterRow",
      label: "Water row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position in Waters of the water added.",
    },
    ({ water, bathRow }, { baths, waters }) =>
      when(isBlank(water), blankIf([isBlank(bathRow)], rowAt(baths, bathRow).waterRow)).otherwise(
        positionOf(water, waters.water),
      ),
  ),
  ...additionCostHelpers,
];

export const additionsSheet: SheetDefinition = {
  id: "additions",
  name: "Additions",
  title: "Additions",
  purpose:
    "Everything that goes into a bath: concentrate and water, at the opening and later. Choose who pays under Account; a blank is charged to no one.",
  caution: cautionsOfSheet("additions"),
  fields: [],
  tables: [
    {
      id: "additions",
      name: "Additions",
      entry: { word: "Addition", letter: "A", about: ["bath", "kind", "amount"] },
      caption: "Additions",
      emptyRows: 1,
      columns: [
        ...inputs,
        ...results,
        ...additionRoom,
        ...additionWater,
        ...helpers,
        furtherByPh,
        ...recoveryHelpers,
        ...additionRoomHelpers,
        ...additionWaterHelpers,
        ...additionIssues,
        additionStatement,
        ...additionChartColumns,
      ],
      signals: [
        { column: "recovery", when: { is: recovery.short }, look: "act" },
        { column: "recovery", when: { is: recovery.over }, look: "watch" },
        { column: "recovery", when: { is: recovery.recovered }, look: "good" },
        { column: "room", when: { is: tankRoom.overLine }, look: "watch" },
        { column: "room", when: { is: tankRoom.overRim }, look: "act" },
        { column: "nextAddition", when: { startsWith: "hardly moved" }, look: "watch" },
        { column: "chartTotal", when: "not available", look: "quiet" },
        { column: "chartCost", when: "not available", look: "quiet" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#7B5EA7",
  pagesWide: 3,
  orientation: "landscape",
};
