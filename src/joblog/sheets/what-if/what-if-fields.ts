import { usualDrop } from "../../../core/bath/common-practice.ts";
import { when } from "../../formula/choices.ts";
import { isBlank } from "../../formula/conditions.ts";
import type { ColumnId, FieldId } from "../../formula/log-names.ts";
import { cellAt, matchIn } from "../../formula/lookups.ts";
import type { FieldDefinition } from "../../model/definition.ts";
import { everywhere } from "../../model/everywhere.ts";
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

/** A figure of the chosen bath; where none is chosen, what is typed above, if it can be typed. */
function reckoned(column: ColumnId<"baths">, typed?: FieldId): NonNullable<FieldDefinition["formula"]> {
  return ({ baths, named }) => {
    const ofBath = cellAt(baths[column], matchIn(named.whatIfBath, baths.bath));
    return when(isBlank(named.whatIfBath), typed === undefined ? "" : named[typed])
      .when(isBlank(ofBath), "")
      .otherwise(ofBath);
  };
}

export const whatIfFields: readonly FieldDefinition[] = [
  {
    id: "whatIfVolume",
    name: "WhatIf.Volume",
    label: "Volume of a bath",
    type: "number",
    unit: volume,
    format: "0.0##",
    limits: volumeLimits,
    initial: { US: 100, metric: 400, imperial: 90 },
    help: "For the doses and the waters below.",
  },
  {
    id: "whatIfConcentrate",
    name: "WhatIf.Concentrate",
    label: "Concentrate",
    type: "choice",
    choices: { kind: "column", table: "concentrates", column: "concentrate" },
    help: "Its capacity and strength count for the waters below.",
  },
  {
    id: "whatIfBath",
    name: "WhatIf.Bath",
    label: "Bath",
    type: "choice",
    choices: { kind: "column", table: "baths", column: "bath" },
    help: "For card and top-ups. Blank: the next five lines count.",
  },
  {
    id: "whatIfBaseline",
    name: "WhatIf.Baseline",
    label: "Or a baseline pH",
    type: "number",
    format: "0.00",
    limits: phLimits,
    initial: everywhere(11.42),
    help: "Without a bath.",
  },
  {
    id: "whatIfTemperature",
    name: "WhatIf.Temperature",
    label: "read at",
    type: "number",
    unit: temperature,
    format: "0.0",
    limits: temperatureLimits,
    initial: { US: 77, metric: 25, imperial: 25 },
    help: "Without a bath.",
  },
  {
    id: "whatIfOpening",
    name: "WhatIf.Opening",
    label: "Opening dose",
    type: "number",
    unit: volume,
    format: "0.0##",
    limits: volumeLimits,
    initial: { US: 2.5, metric: 10, imperial: 2.25 },
    help: "Without a bath.",
  },
  {
    id: "whatIfBuilder",
    name: "WhatIf.Builder",
    label: "Builder",
    type: "choice",
    choices: { kind: "fixed", choices: builders },
    initial: everywhere("unknown"),
    help: "Without a bath. Unknown gives wider ranges.",
  },
  {
    id: "whatIfDrop",
    name: "WhatIf.Drop",
    label: "Drop allowed, pH",
    type: "number",
    format: "0.00",
    limits: between(0.05, 3),
    initial: everywhere(usualDrop),
    help: "Without a bath; 0.5 is common practice, no source.",
  },
  {
    id: "baselineTried",
    name: "WhatIf.BaselineUsed",
    label: "Worked out for a baseline of",
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
    formula: reckoned("dropUsed", "whatIfDrop"),
  },
  {
    id: "builderTried",
    name: "WhatIf.BuilderUsed",
    label: "Builder, concentrate",
    type: "choice",
    help: "What makes the concentrate alkaline.",
    formula: reckoned("builderUsed", "whatIfBuilder"),
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
