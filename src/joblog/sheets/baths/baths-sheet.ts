import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { printedFirst } from "../../layout/printed-first.ts";
import type { SheetDefinition } from "../../model/definition.ts";
import {
  baselineStanding,
  bathState,
  bench,
  costStanding,
  degassing,
  labelCheck,
  readingVerdict,
} from "../../model/words.ts";
import { bathCareHelpers } from "./bath-care.ts";
import { bathCostHelpers, bathCostKinds, bathCosts, bathPosted } from "./bath-costs.ts";
import { bathDose } from "./bath-dose.ts";
import { bathHelpers } from "./bath-helpers.ts";
import { bathBaselineInputs, bathInputs, bathName, bathSettledInputs } from "./bath-inputs.ts";
import { bathStanding, bathStateColumn, bathStateHelpers } from "./bath-standing.ts";

const printed: readonly ColumnId<"baths">[] = [
  "bath",
  "state",
  "tank",
  "water",
  "concentrate",
  "opened",
  "strength",
  "openingDose",
  "benchState",
  "baseline",
  "trigger",
  "lastVerdict",
  "topUpShare",
];

export const bathsSheet: SheetDefinition = {
  id: "baths",
  name: "Baths",
  title: "Baths",
  purpose: "One row for every fill, from the charge to the change-out.",
  caution: cautionsOfSheet("baths"),
  fields: [
    {
      id: "chartBath",
      name: "Chart.Bath",
      label: "First bath in the charts",
      type: "choice",
      choices: { kind: "column", table: "baths", column: "bath" },
      help: "The sheet Charts begins with this bath; blank means the first one below.",
    },
  ],
  tables: [
    {
      id: "baths",
      name: "Baths",
      entry: { word: "Bath", about: ["tank"] },
      caption: "Baths",
      emptyRows: 1,
      columns: printedFirst(
        [
          bathName,
          bathStateColumn,
          ...bathInputs,
          ...bathBaselineInputs,
          ...bathSettledInputs,
          ...bathDose,
          ...bathStanding,
          ...bathCosts,
          ...bathPosted,
          ...bathHelpers,
          ...bathStateHelpers,
          ...bathCareHelpers,
          ...bathCostHelpers,
          ...bathCostKinds,
        ],
        printed,
      ),
      signals: [
        { column: "state", when: { is: bathState.topUp }, look: "act" },
        { column: "state", when: { is: bathState.reRead }, look: "watch" },
        { column: "state", when: { is: bathState.inUse }, look: "good" },
        { column: "state", when: { is: bathState.closed }, look: "quiet" },
        { column: "benchState", when: { is: bench.refused }, look: "act" },
        { column: "benchState", when: { is: bench.accepted }, look: "good" },
        { column: "labelCheck", when: { is: labelCheck.wanted }, look: "act" },
        { column: "labelCheck", when: { is: labelCheck.poured }, look: "act" },
        { column: "lastVerdict", when: { is: "top up" }, look: "act" },
        { column: "lastVerdict", when: { is: readingVerdict.notBack }, look: "act" },
        { column: "lastVerdict", when: { is: "near" }, look: "watch" },
        { column: "lastVerdict", when: { startsWith: "re-read" }, look: "watch" },
        { column: "lastVerdict", when: { is: readingVerdict.check }, look: "watch" },
        { column: "changeOut", when: { startsWith: "top-ups" }, look: "watch" },
        { column: "degassed", when: { is: degassing.none }, look: "watch" },
        { column: "degassed", when: { is: degassing.late }, look: "watch" },
        { column: "ageSignal", when: { startsWith: "old" }, look: "watch" },
        { column: "baselineState", when: { is: baselineStanding.differ }, look: "act" },
        { column: "baselineState", when: { is: baselineStanding.unwritten }, look: "act" },
        { column: "baselineState", when: { is: baselineStanding.noTemperature }, look: "act" },
        { column: "baselineState", when: { is: baselineStanding.older }, look: "act" },
        { column: "baselineState", when: { is: baselineStanding.noReadings }, look: "watch" },
        { column: "baselineState", when: { startsWith: baselineStanding.otherPh }, look: "act" },
        { column: "baselineState", when: { startsWith: baselineStanding.otherTemperature }, look: "act" },
        { column: "postedOff", when: { isNot: 0 }, look: "act" },
        { column: "costOpen", when: { isNot: 0 }, look: "act" },
        { column: "costState", when: { startsWith: costStanding.provisional }, look: "watch" },
        { column: "costState", when: { is: costStanding.placed }, look: "good" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#3C7A6B",
  pagesWide: 1,
  orientation: "landscape",
};
