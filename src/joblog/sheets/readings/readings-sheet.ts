import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import type { SheetDefinition } from "../../model/definition.ts";
import { readingVerdict as verdicts } from "../../model/words.ts";
import { readingBath } from "./reading-bath.ts";
import { readingCheckColumn, readingCheckHelpers } from "./reading-check.ts";
import { readingHelpers } from "./reading-helpers.ts";
import { readingDetails, readingInputs } from "./reading-inputs.ts";
import { readingMeterHelpers } from "./reading-meter.ts";
import { readingRounds } from "./reading-rounds.ts";
import { readingDrift, readingFigures, readingVerdict, readingVerdictHelpers } from "./reading-verdict.ts";

const charted = ["chartablePh", "chartPh", "chartPh2", "chartPh3", "chartPh4", "chartBaseline", "chartTrigger"];

export const readingsSheet: SheetDefinition = {
  id: "readings",
  name: "Readings",
  title: "pH readings",
  purpose: "Every reading as the meter showed it, with the sample's temperature. Never overwrite one: add a row.",
  caution: `A hot bath reads lower than the same bath cooled, with a perfect meter too: cool the sample to the baseline's temperature.\n${cautionsOfSheet("readings")}`,
  fields: [],
  tables: [
    {
      id: "readings",
      name: "Readings",
      entry: { word: "Reading", letter: "R", about: ["bath", "ph"] },
      caption: "Readings",
      emptyRows: 1,
      columns: [
        ...readingInputs,
        ...readingVerdict,
        ...readingDetails,
        readingCheckColumn,
        ...readingDrift,
        ...readingFigures,
        ...readingMeterHelpers,
        ...readingCheckHelpers,
        ...readingVerdictHelpers,
        ...readingBath,
        ...readingHelpers,
        ...readingRounds,
      ],
      signals: [
        { column: "verdict", when: { is: verdicts.topUp }, look: "act" },
        { column: "verdict", when: { is: verdicts.notBack }, look: "act" },
        { column: "verdict", when: { is: verdicts.near }, look: "watch" },
        { column: "verdict", when: { startsWith: verdicts.reRead }, look: "watch" },
        { column: "verdict", when: { is: verdicts.above }, look: "watch" },
        { column: "verdict", when: { is: verdicts.check }, look: "watch" },
        { column: "verdict", when: { startsWith: verdicts.uncounted }, look: "watch" },
        { column: "verdict", when: { is: verdicts.noTemperature }, look: "watch" },
        { column: "verdict", when: { is: verdicts.hold }, look: "good" },
        { column: "flag", when: { startsWith: "verdict changed" }, look: "act" },
        ...charted.map((column) => ({ column, when: "not available", look: "quiet" }) as const),
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#35698C",
  pagesWide: 3,
  orientation: "landscape",
};
