import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { printedFirst } from "../../layout/printed-first.ts";
import type { SheetDefinition } from "../../model/definition.ts";
import { acidBases, releaseState } from "../../model/words.ts";
import { acidUnit } from "./release-acid-unit.ts";
import { releaseDetails, releaseInputs } from "./release-inputs.ts";
import { releaseHelpers, releasePlan, releaseStanding } from "./release-results.ts";

/** What the record must show on paper: volume, acid in stages, limits, results, when, how much, where, who. */
const printed: readonly ColumnId<"releases">[] = [
  "id",
  "bath",
  "when",
  "volume",
  "ph",
  "alkalinity",
  "acid",
  "purity",
  "target",
  "acidUnit",
  "acidNeeded",
  "corrosive",
  "stage1",
  "phAfter1",
  "stage2",
  "phAfter2",
  "stage3",
  "phAfter3",
  "lowUsed",
  "highUsed",
  "permitUsed",
  "analyses",
  "analysesResult",
  "lastPh",
  "limitCheck",
  "state",
  "releasedAt",
  "releasedVolume",
  "point",
  "retainedUntil",
  "initials",
  "note",
];

export const releaseSheet: SheetDefinition = {
  id: "release",
  name: "Release",
  title: "Neutralizing and release",
  purpose:
    "From the spent bath to the drain: acid in stages, pH after each, limits, results, place and person. The log never says that a release is allowed: the permit does.",
  caution: cautionsOfSheet("release"),
  fields: [],
  tables: [
    {
      id: "releases",
      name: "Releases",
      entry: { word: "Release", letter: "D", about: ["bath"] },
      caption: "Releases",
      emptyRows: 1,
      columns: printedFirst(
        [...releaseInputs, acidUnit, ...releasePlan, ...releaseDetails, ...releaseStanding, ...releaseHelpers],
        printed,
      ),
      signals: [
        { column: "state", when: { startsWith: "not released" }, look: "watch" },
        { column: "state", when: { startsWith: "released, but" }, look: "act" },
        { column: "state", when: { is: releaseState.released }, look: "good" },
        { column: "limitCheck", when: { is: "below" }, look: "act" },
        { column: "limitCheck", when: { is: "above" }, look: "act" },
        { column: "corrosive", when: { is: "yes" }, look: "act" },
        { column: "acidByAlkali", when: "not available", look: "quiet" },
        { column: "acidBasis", when: { is: acidBases.ph }, look: "watch" },
        { column: "acidBasis", when: { is: acidBases.partly }, look: "watch" },
        { column: "acidBasis", when: { is: acidBases.logged }, look: "watch" },
        { column: "analysesResult", when: { is: "over a limit" }, look: "act" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#9A5B3C",
  pagesWide: 3,
  orientation: "landscape",
};
