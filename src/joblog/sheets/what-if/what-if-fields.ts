import { asText } from "../../formula/arithmetic.ts";
import { when } from "../../formula/choices.ts";
import { isBlank, isFilled } from "../../formula/conditions.ts";
import type { Value } from "../../formula/expression.ts";
import type { ColumnId, FieldId, Log } from "../../formula/log-names.ts";
import { cellAt, positionOf } from "../../formula/lookups.ts";
import type { FieldDefinition } from "../../model/definition.ts";
import {
  between,
  phLimits,
  temperature,
  temperatureLimits,
  volume,
  volumeLimits,
  waterAlkalinity,
} from "../../model/units-of.ts";
import { builders } from "../../model/words.ts";

/** What is typed above; where that is blank, the figure of the bath, and where it has none, `usual`. */
function reckoned(
  column: ColumnId<"baths">,
  typed?: FieldId,
  usual: (log: Log) => Value = () => "",
): NonNullable<FieldDefinition["formula"]> {
  return (log) => {
    const { baths, named } = log;
    const ofBath = cellAt(baths[column], named.bathRowTried);
    const fromLog = when(isBlank(named.bathRowTried), usual(log)).when(isBlank(ofBath), usual(log)).otherwise(ofBath);
    return typed === undefined ? fromLog : when(isFilled(named[typed]), named[typed]).otherwise(fromLog);
  };
}

export const whatIfFields: readonly FieldDefinition[] = [
  {
    id: "whatIfBath",
    name: "WhatIf.Bath",
    label: "Bath",
    type: "choice",
    choices: { kind: "column", table: "baths", column: "bath" },
    help: "Blank: the first bath in the charts.",
  },
  {
    id: "whatIfVolume",
    name: "WhatIf.Volume",
    label: "Volume of a bath",
    type: "number",
    unit: volume,
    format: "0.0##",
    limits: volumeLimits,
    help: "Blank: of the bath's tank.",
  },
  {
    id: "whatIfConcentrate",
    name: "WhatIf.Concentrate",
    label: "Concentrate",
    type: "choice",
    choices: { kind: "column", table: "concentrates", column: "concentrate" },
    help: "Blank: the bath's. Its capacity and strength count for the waters.",
  },
  {
    id: "whatIfBaseline",
    name: "WhatIf.Baseline",
    label: "Baseline pH",
    type: "number",
    format: "0.00",
    limits: phLimits,
    help: "Blank: the bath's.",
  },
  {
    id: "whatIfTemperature",
    name: "WhatIf.Temperature",
    label: "read at",
    type: "number",
    unit: temperature,
    format: "0.0",
    limits: temperatureLimits,
    help: "Blank: the bath's.",
  },
  {
    id: "whatIfOpening",
    name: "WhatIf.Opening",
    label: "Opening dose",
    type: "number",
    unit: volume,
    format: "0.0##",
    limits: volumeLimits,
    help: "Blank: the bath's.",
  },
  {
    id: "whatIfBuilder",
    name: "WhatIf.Builder",
    label: "Builder",
    type: "choice",
    choices: { kind: "fixed", choices: builders },
    help: "Blank: the bath's. Unknown gives wider ranges.",
  },
  {
    id: "whatIfDrop",
    name: "WhatIf.Drop",
    label: "Drop allowed, pH",
    type: "number",
    format: "0.00",
    limits: between(0.05, 3),
    help: "Blank: the bath's, or else the shop's.",
  },
  {
    id: "bathTried",
    name: "WhatIf.BathUsed",
    label: "Worked out for bath",
    type: "text",
    help: "What is typed above counts before its figures.",
    formula: ({ baths, named }) => {
      const first = cellAt(baths.bath, 1);
      return when(isFilled(named.whatIfBath), asText(named.whatIfBath))
        .when(isFilled(named.chartBath), asText(named.chartBath))
        .when(isBlank(first), "")
        .otherwise(asText(first));
    },
  },
  {
    id: "bathRowTried",
    name: "WhatIf.BathRow",
    label: "in row",
    type: "whole number",
    help: "Of the table on Baths.",
    formula: ({ baths, named }) => positionOf(named.bathTried, baths.bath),
  },
  {
    id: "volumeTried",
    name: "WhatIf.VolumeUsed",
    label: "a volume of",
    type: "number",
    unit: volume,
    format: "0.0##",
    help: "For the doses and the waters below.",
    formula: reckoned("workingVolume", "whatIfVolume"),
  },
  {
    id: "concentrateTried",
    name: "WhatIf.ConcentrateUsed",
    label: "the concentrate",
    type: "text",
    help: "As listed on Job.",
    formula: reckoned("concentrate", "whatIfConcentrate"),
  },
  {
    id: "concentrateRowTried",
    name: "WhatIf.ConcentrateRow",
    label: "in row",
    type: "whole number",
    help: "Of the table on Job.",
    formula: ({ concentrates, named }) => positionOf(named.concentrateTried, concentrates.concentrate),
  },
  {
    id: "baselineTried",
    name: "WhatIf.BaselineUsed",
    label: "a baseline of",
    type: "number",
    format: "0.00",
    help: "Make a new card for every baseline.",
    formula: reckoned("baseline", "whatIfBaseline"),
    signals: [{ when: { isNot: 0 }, look: "good" }],
  },
  {
    id: "temperatureTried",
    name: "WhatIf.TemperatureUsed",
    label: "at",
    type: "number",
    unit: temperature,
    format: "0.0",
    help: "The baseline's temperature.",
    formula: reckoned("baselineTemperature", "whatIfTemperature"),
  },
  {
    id: "openingTried",
    name: "WhatIf.OpeningUsed",
    label: "with an opening dose of",
    type: "number",
    unit: volume,
    format: "0.000",
    help: "Top-ups are shares of it.",
    formula: reckoned("openingDose", "whatIfOpening"),
  },
  {
    id: "dropTried",
    name: "WhatIf.DropUsed",
    label: "and a drop of",
    type: "number",
    format: "0.00",
    help: "In pH, from the baseline to the trigger.",
    formula: reckoned("dropUsed", "whatIfDrop", ({ named }) =>
      when(isBlank(named.usualDrop), "").otherwise(named.usualDrop),
    ),
  },
  {
    id: "builderTried",
    name: "WhatIf.BuilderUsed",
    label: "Builder, concentrate",
    type: "choice",
    help: "What makes the concentrate alkaline.",
    formula: reckoned("builderUsed", "whatIfBuilder", () => "unknown"),
  },
  {
    id: "alkalinityTried",
    name: "WhatIf.AlkalinityUsed",
    label: "Alkalinity, water",
    type: "number",
    format: "General",
    unit: waterAlkalinity,
    help: "Of the bath's water; blank counts as any usual water.",
    formula: reckoned("alkalinity"),
  },
];
