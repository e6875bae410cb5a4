import { alkalinityDose } from "../../../../functions/charge/alkalinity-dose.ts";
import { dose } from "../../../../functions/charge/dose.ts";
import { hardnessDose } from "../../../../functions/charge/hardness-dose.ts";
import { phAt } from "../../../../functions/ph/ph-at.ts";
import { trigger } from "../../../../functions/threshold/trigger.ts";
import { countOfNumbers, minus, rounded, sum, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isFilled, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { inMilligrams } from "../../formula/in-milligrams.ts";
import type { ColumnId, Log, Row } from "../../formula/log-names.ts";
import { cellAt, rowAt, thisLine } from "../../formula/lookups.ts";
import { topUpPlaces, topUpShareOf } from "../../formula/top-up-shares.ts";
import { columnsOf, numberInput, textInput } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition, UnitOf } from "../../model/definition.ts";
import {
  between,
  equivalents,
  hardness,
  sequestering,
  temperature,
  temperatureLimits,
  volume,
  waterAlkalinity,
} from "../../model/units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 19 } as const;

function doseAt(id: string, label: string, share: number): ComputedColumn {
  return columnsOf<"whatIfDoses">().computed(
    { id, label, ...amount, help: "Concentrate for a finished bath of that volume." },
    ({ strength }, { named }) =>
      blankIf(
        [isBlank(strength), isBlank(named.volumeTried)],
        call(dose, { volume: times(share, named.volumeTried), rate: strength, system: named.unitSystem }),
      ),
  );
}

const doses: TableDefinition = {
  id: "whatIfDoses",
  name: "WhatIfDoses",
  caption: "Doses: strengths by volumes",
  newPage: true,
  emptyRows: 5,
  start: () => ["1+20", "1+28", "1+40", "1+64", "2.5%"].map((strength) => ({ strength })),
  columns: [
    textInput({ id: "strength", label: "Strength", width: 20, help: "Written 1+40, 1 in 40, 2.5% or 3 fl oz/gal." }),
    doseAt("half", "Half the volume", 0.5),
    doseAt("full", "The volume", 1),
    doseAt("oneAndHalf", "One and a half", 1.5),
    doseAt("twice", "Twice the volume", 2),
  ],
};

const cardColumns = columnsOf<"whatIfCard">();

const card: TableDefinition = {
  id: "whatIfCard",
  name: "WhatIfCard",
  caption: "Card for the tank: a top-up is due at or under this pH",
  emptyRows: 9,
  start: (system) =>
    (system === "US" ? [68, 77, 86, 95, 104, 113, 122, 131, 140] : [20, 25, 30, 35, 40, 45, 50, 55, 60]).map((one) => ({
      temperature: one,
    })),
  columns: [
    numberInput({
      id: "temperature",
      label: "Sample temp",
      unit: temperature,
      limits: temperatureLimits,
      format: "0",
      width: 20,
      help: "Temperature of the sample when it is read.",
    }),
    cardColumns.computed(
      {
        id: "baselineThere",
        label: "The baseline reads",
        type: "number",
        format: "0.00",
        width: 19,
        help: "The fresh bath at that temperature, with a perfect meter.",
      },
      (sample, { named }) =>
        blankIf(
          [isBlank(named.baselineTried), isNoNumber(sample.temperature)],
          call(phAt, {
            ph: named.baselineTried,
            from_temperature: named.temperatureTried,
            to_temperature: sample.temperature,
            builder: named.builderTried,
            alkalinity: inMilligrams(named.alkalinityTried),
            system: named.unitSystem,
          }),
        ),
    ),
    cardColumns.computed(
      {
        id: "trigger",
        label: "Top up at",
        type: "number",
        format: "0.00",
        width: 19,
        help: "Best figure; near it, cool the sample and read again.",
      },
      (sample, { named }) =>
        blankIf(
          [isBlank(named.baselineTried), isNoNumber(sample.temperature)],
          call(trigger, {
            baseline: named.baselineTried,
            drop: named.dropTried,
            baseline_temperature: named.temperatureTried,
            reading_temperature: sample.temperature,
            builder: named.builderTried,
            alkalinity: inMilligrams(named.alkalinityTried),
            system: named.unitSystem,
          }),
        ),
    ),
  ],
};

const topUpColumns = columnsOf<"whatIfTopUps">();

type TopUpShare = "shareLow" | "shareBest" | "shareHigh" | "shareFirst";

function topUp(id: string, label: string, share: TopUpShare, help: string): ComputedColumn {
  return topUpColumns.computed({ id, label, ...amount, help }, (fall, { named }) =>
    blankIf([isBlank(fall.reading), isBlank(named.openingTried)], times(named.openingTried, fall[share])),
  );
}

function topUpShare(id: TopUpShare, label: string, place: number): ComputedColumn {
  const column = { id, label, type: "share", format: "0.0%", width: 19, help: "Of the opening dose." } as const;
  return topUpColumns.helper(column, ({ reading }, { named }) =>
    blankIf(
      [isBlank(reading)],
      topUpShareOf(
        {
          opening_dose: when(isNumber(reading), 1).otherwise(""),
          baseline: named.baselineTried,
          reading,
          builder: named.builderTried,
          temperature: named.temperatureTried,
          alkalinity: inMilligrams(named.alkalinityTried),
          house_share: named.houseShare,
          meter_accuracy: named.meterLimit,
          system: named.unitSystem,
        },
        place,
      ),
    ),
  );
}

const topUps: TableDefinition = {
  id: "whatIfTopUps",
  name: "WhatIfTopUps",
  caption: "Top-ups: from a fall of the pH back to the baseline",
  emptyRows: 7,
  start: () => [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1].map((fall) => ({ fall })),
  columns: [
    numberInput({
      id: "fall",
      label: "Under the baseline, pH",
      limits: between(0, 5),
      format: "0.00",
      width: 20,
      help: "At the baseline's temperature.",
    }),
    topUpColumns.computed(
      { id: "reading", label: "Reads", type: "number", format: "0.00", width: 19, help: "The baseline less the fall." },
      ({ fall }, { named: { baselineTried } }) =>
        blankIf([isBlank(baselineTried), isNoNumber(fall)], rounded(minus(baselineTried, fall), 2)),
    ),
    topUp("low", "Low", "shareLow", "Lowest likely top-up."),
    topUp("best", "Best", "shareBest", "Best estimate."),
    topUp("high", "High", "shareHigh", "Highest likely top-up."),
    topUp("first", "First addition", "shareFirst", "Add this, mix, read again."),
    topUpShare("shareLow", "Low, share", topUpPlaces.low),
    topUpShare("shareBest", "Best, share", topUpPlaces.best),
    topUpShare("shareHigh", "High, share", topUpPlaces.high),
    topUpShare("shareFirst", "First, share", topUpPlaces.first),
  ],
};

const waterColumns = columnsOf<"whatIfWaters">();

/** The line of the concentrate that is chosen. */
const chosen = ({ concentrates, named }: Log): Row<"concentrates"> => rowAt(concentrates, named.concentrateRowTried);

/** The dose for a figure of the water, once a concentrate is chosen whose own figure for it is known. */
function extraFor(
  figure: Expression,
  used: Expression,
  { unchosen }: Row<"whatIfWaters">,
  ofConcentrate: Expression,
  extra: Expression,
): Expression {
  return blankIf(
    [isBlank(used)],
    when(isFilled(unchosen), unchosen)
      .when(equal(figure, 0), 0)
      .when(isBlank(ofConcentrate), "not known")
      .otherwise(extra),
  );
}

/** What was tested with its unit; blank for what is no water, and as long as there is no volume. */
function used(id: string, label: string, of: "hardness" | "alkalinity"): ComputedColumn {
  return waterColumns.helper(
    { id, label, type: "text", width: 10, help: "As tested, with its unit." },
    (row, { named }) =>
      blankIf([isBlank(row.water), isNoNumber(row[of]), isBlank(named.volumeTried)], inMilligrams(row[of])),
  );
}

const labLimits = between(0, 5000);

/** What a water costs in concentrate, column by column. */
const waterExtras: readonly ComputedColumn[] = [
  waterColumns.computed(
    {
      id: "forHardness",
      label: "Extra for hardness",
      ...amount,
      help: "Above what the label's strength allows for.",
    },
    (water, log) => {
      const { capacity, labelHardness, hardnessUsed } = water;
      const { unitSystem, volumeTried } = log.named;
      const extra = call(hardnessDose, {
        volume: volumeTried,
        hardness: hardnessUsed,
        capacity,
        label_hardness: labelHardness,
        system: unitSystem,
      });
      return extraFor(water.hardness, hardnessUsed, water, capacity, extra);
    },
  ),
  waterColumns.computed(
    { id: "forAlkalinity", label: "Extra for alkalinity", ...amount, help: "What the bicarbonate uses up." },
    (water, log) => {
      const { alkaliStrength, alkalinityUsed } = water;
      const { unitSystem, volumeTried } = log.named;
      const extra = call(alkalinityDose, {
        volume: volumeTried,
        alkalinity: alkalinityUsed,
        strength_eq_L: alkaliStrength,
        system: unitSystem,
      });
      return extraFor(water.alkalinity, alkalinityUsed, water, alkaliStrength, extra);
    },
  ),
  waterColumns.computed(
    { id: "together", label: "Extra together", ...amount, help: "On top of the dose of the label." },
    ({ forHardness, forAlkalinity }) =>
      blankIf([equal(countOfNumbers(forHardness, forAlkalinity), 0)], sum(forHardness, forAlkalinity)),
  ),
];

/** A figure of the concentrate that is chosen; blank where it is not known or 0. */
function ofChosen(
  id: string,
  column: "capacity" | "alkalinityStrength",
  rest: Readonly<Record<"label" | "format" | "help", string>> & { readonly unit: UnitOf },
): ComputedColumn {
  return waterColumns.helper({ id, type: "number", width: 9, ...rest }, (_, log) => {
    const figure = chosen(log)[column];
    return blankIf([isBlank(log.named.concentrateRowTried)], blankIf([isBlank(figure), equal(figure, 0)], figure));
  });
}

/** What the concentrate that is chosen has to do with them. */
const waterHelpers: readonly ComputedColumn[] = [
  used("hardnessUsed", "Hardness used", "hardness"),
  used("alkalinityUsed", "Alkalinity used", "alkalinity"),
  waterColumns.helper(
    {
      id: "unchosen",
      label: "Not chosen",
      type: "text",
      width: 14,
      help: "What is to be chosen before an extra shows.",
    },
    ({ water }, { named }) =>
      when(isBlank(water), "")
        .when(isBlank(named.concentrateTried), "choose a concentrate")
        .when(isBlank(named.concentrateRowTried), "concentrate not on Job")
        .otherwise(""),
  ),
  ofChosen("capacity", "capacity", {
    label: "Capacity used",
    unit: sequestering,
    format: "0.0#",
    help: "Hardness that the concentrate ties up.",
  }),
  ofChosen("alkaliStrength", "alkalinityStrength", {
    label: "Alkali strength used",
    unit: equivalents,
    format: "0.000",
    help: "Of the concentrate.",
  }),
  waterColumns.helper(
    {
      id: "labelHardness",
      label: "Label's hardness",
      type: "text",
      width: 10,
      help: "What the concentrate's label covers, with its unit; blank where it says nothing.",
    },
    (_, log) => {
      const { labelHardness } = chosen(log);
      return blankIf(
        [isBlank(log.named.concentrateRowTried)],
        blankIf([isBlank(labelHardness)], inMilligrams(labelHardness)),
      );
    },
  ),
];

/** The waters of the shop itself, as far as the page has room. */
const shopWaterColumns = columnsOf<"whatIfShopWaters">();

const shopWaterLines = 4;

function ofWater(
  id: ColumnId<"waters"> & ColumnId<"whatIfShopWaters">,
  rest: Pick<ComputedColumn, "label" | "type" | "unit" | "format" | "width" | "help">,
): ComputedColumn {
  return shopWaterColumns.computed({ id, ...rest }, ({ line }, { waters: listed }) => {
    const cell = cellAt(listed[id], line);
    return when(isOver(line, apply("ROWS", listed.water)), "")
      .when(isBlank(cell), "")
      .otherwise(cell);
  });
}

const shopWaters: TableDefinition = {
  id: "whatIfShopWaters",
  name: "WhatIfShopWaters",
  caption: "Waters on Job: what hardness and alkalinity cost in concentrate",
  emptyRows: shopWaterLines,
  fixedRows: true,
  columns: [
    ofWater("water", { label: "Water", type: "text", width: 20, help: "The first four on Job." }),
    ofWater("hardness", {
      label: "Hardness",
      type: "number",
      unit: hardness,
      format: "0",
      width: 19,
      help: "As tested.",
    }),
    ofWater("alkalinity", {
      label: "Alkalinity",
      type: "number",
      unit: waterAlkalinity,
      format: "0",
      width: 19,
      help: "As tested.",
    }),
    ...waterExtras,
    shopWaterColumns.helper(
      { id: "line", label: "Line", type: "whole number", format: "0", width: 6, help: "Running number of the line." },
      (_row, { whatIfShopWaters: { line } }) => thisLine(line),
    ),
    ...waterHelpers,
  ],
};

const waters: TableDefinition = {
  id: "whatIfWaters",
  name: "WhatIfWaters",
  caption: "Other waters (invented examples: type your own)",
  emptyRows: 4,
  start: () => [
    { water: "RO", hardness: 5, alkalinity: 5 },
    { water: "softened", hardness: 10, alkalinity: 200 },
    { water: "hard", hardness: 300, alkalinity: 200 },
  ],
  columns: [
    textInput({ id: "water", label: "Water", width: 20, help: "Any name." }),
    numberInput({
      id: "hardness",
      label: "Hardness",
      unit: hardness,
      limits: labLimits,
      format: "0",
      width: 19,
      help: "Softening takes it away.",
    }),
    numberInput({
      id: "alkalinity",
      label: "Alkalinity",
      unit: waterAlkalinity,
      limits: labLimits,
      format: "0",
      width: 19,
      help: "Softening leaves it.",
    }),
    ...waterExtras,
    ...waterHelpers,
  ],
};

export const whatIfTables: readonly TableDefinition[] = [card, topUps, doses, shopWaters, waters];
