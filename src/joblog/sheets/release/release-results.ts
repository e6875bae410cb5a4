import { acidTo } from "../../../../functions/discharge/acid-to.ts";
import { corrosive } from "../../../../functions/discharge/corrosive.ts";
import { dischargeCheck } from "../../../../functions/discharge/discharge-check.ts";
import { acidStages } from "../../../core/discharge/acid-stages.ts";
import { placesAmongLimits } from "../../../core/discharge/release-limits.ts";
import { dividedBy, joined, largest, plus, rounded, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, is, isBlank, isFilled, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import { litersInUnit } from "../../formula/liters-in-unit.ts";
import type { ColumnId, FieldId, Log, Row } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { milligramsPerEquivalent } from "../../formula/milligrams-per-equivalent.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { acidAmount, alkaliAdded, hardness } from "../../model/units-of.ts";
import { acidBases, releaseState, yesNo } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";

const { computed, helper } = columnsOf<"releases">();

/** Stages are in proportion to the acid. */
const [firstShare] = acidStages(1);

const acidColumn = { type: "number", unit: acidAmount, format: "0.000", width: 10 } as const;

function neededAcid(
  { volume, ph, target, acid, builderUsed, temperature, purity }: Row<"releases">,
  { named }: Log,
  alkalinity?: Expression,
): Expression {
  return call(acidTo, {
    volume,
    ph,
    target_ph: target,
    acid,
    builder: builderUsed,
    temperature,
    ...(alkalinity === undefined ? {} : { alkalinity }),
    purity,
    system: named.unitSystem,
  });
}

/** What is to be worked out before anybody pours. */
export const releasePlan: readonly ComputedColumn[] = [
  computed(
    {
      id: "acidNeeded",
      label: "Acid needed",
      ...acidColumn,
      help: "From the reading to the target pH. With a titration within about 16 % down to pH 7, but up to half off at pH 9. Without one by the water and concentrate logged, an estimate, or by the pH alone, a minimum: add in stages and read.",
    },
    (row) =>
      blankIf(
        [isBlank(row.planned)],
        when(isNumber(row.alkalinity), row.acidByAlkali)
          .when(isNumber(row.acidByAlkali), largest(row.acidByAlkali, row.acidByPh))
          .otherwise(row.acidByPh),
      ),
  ),
  computed(
    {
      id: "acidBasis",
      label: "Worked out from",
      type: "text",
      words: Object.values(acidBases),
      width: 15,
      help: "By the pH alone soil acids and carbonate do not show, and the acid is a minimum. What was logged does not know what soil used up.",
    },
    ({ acidNeeded, alkalinity, acidByAlkali, bathRow }, { baths }) =>
      blankIf(
        [isBlank(acidNeeded)],
        when(isNumber(alkalinity), acidBases.titration)
          .when(isNoNumber(acidByAlkali), acidBases.ph)
          .when(isOver(rowAt(baths, bathRow).watersUntested, 0), acidBases.partly)
          .otherwise(acidBases.logged),
      ),
  ),
  computed(
    {
      id: "firstStage",
      label: "First stage",
      ...acidColumn,
      help: "60 % of it (common practice, no source). Mix, read, then decide the next.",
    },
    ({ acidNeeded }) => blankIf([isBlank(acidNeeded)], times(acidNeeded, firstShare)),
  ),
  computed(
    {
      id: "corrosive",
      label: "Corrosive waste, D002",
      type: "text",
      words: yesNo,
      width: 11,
      help: "By the pH before any acid: 2 or less, or 12.5 or more (40 CFR 261.22). It says nothing of metals.",
    },
    ({ ph }) => blankIf([isNoNumber(ph)], when(call(corrosive, { ph }), "yes").otherwise("no")),
  ),
];

/** Where it stands; never that it may go. */
export const releaseStanding: readonly ComputedColumn[] = [
  computed(
    {
      id: "lastPh",
      label: "Last pH",
      type: "number",
      format: "0.00",
      width: 8,
      help: "After the latest stage, or before any acid.",
    },
    ({ ph, phAfter1, phAfter2, phAfter3 }) =>
      when(isNumber(phAfter3), phAfter3)
        .when(isNumber(phAfter2), phAfter2)
        .when(isNumber(phAfter1), phAfter1)
        .when(isNumber(ph), ph)
        .otherwise(""),
  ),
  computed(
    {
      id: "limitCheck",
      label: "Against the limits",
      type: "text",
      words: placesAmongLimits,
      width: 10,
      help: "Within, below or above the limits typed here, or else the shop's own. Within is not permission.",
    },
    ({ lastPh, lowUsed, highUsed }) =>
      blankIf(
        [isBlank(lastPh), isBlank(lowUsed), isBlank(highUsed)],
        call(dischargeCheck, { ph: lastPh, low: lowUsed, high: highUsed }),
      ),
  ),
  computed(
    {
      id: "state",
      label: "State",
      type: "text",
      words: Object.values(releaseState),
      width: 20,
      help: "Stays not released until limits and results are in and the last pH is within the limits. Whether it may go, the permit says.",
    },
    (row) =>
      blankIf(
        [isBlank(row.bath)],
        when(isFilled(row.phHolds), row.phHolds)
          .when(isFilled(row.resultsHold), row.resultsHold)
          .when(isNoNumber(row.releasedAt), releaseState.entered)
          .when(equal(row.incomplete, 1), releaseState.incomplete)
          .otherwise(releaseState.released),
      ),
  ),
];

function ownOrShops(
  id: string,
  own: ColumnId<"releases">,
  shops: FieldId,
  label: string,
  help: string,
): ComputedColumn {
  const look =
    own === "permit"
      ? ({ type: "text", width: 15 } as const)
      : ({ type: "number", format: "General", width: 9 } as const);
  return computed({ id, label, ...look, help }, ({ [own]: typed }, { named: { [shops]: usual } }) =>
    when(isFilled(typed), typed).when(isBlank(usual), "").otherwise(usual),
  );
}

export const releaseHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "alkalinityLogged",
      label: "Alkalinity by the log",
      type: "number",
      unit: hardness,
      format: "0",
      width: 11,
      help: "Total alkalinity that water and concentrate brought, less what was drained and carried out at the strength of the end. A water that was not tested counts for nothing; blank where the concentrate's alkali strength is not known.",
    },
    ({ bathRow, volume, alkaliBrought }, log) => {
      const { solutionLeft } = rowAt(log.baths, bathRow);
      const liters = times(plus(volume, solutionLeft), litersInUnit(log));
      return blankIf(
        [isBlank(alkaliBrought), isNoNumber(volume)],
        when(equal(volume, 0), "").otherwise(dividedBy(times(milligramsPerEquivalent, alkaliBrought), liters)),
      );
    },
  ),
  helper(
    {
      id: "acidByAlkali",
      label: "Acid by the alkalinity",
      ...acidColumn,
      help: "By the alkalinity titrated, or else by that of the log; none where the reading contradicts it.",
    },
    (row, log) => {
      const { planned, alkalinityUsed } = row;
      return blankIf([isBlank(planned), isBlank(alkalinityUsed)], neededAcid(row, log, alkalinityUsed));
    },
  ),
  helper(
    { id: "acidByPh", label: "Acid by the pH", ...acidColumn, help: "The least that the reading calls for." },
    (row, log) => blankIf([isBlank(row.planned)], neededAcid(row, log)),
  ),
  ownOrShops("lowUsed", "limitLow", "sewerLow", "Low limit, pH", "The limit typed here, or else the shop's own."),
  ownOrShops("highUsed", "limitHigh", "sewerHigh", "High limit, pH", "The limit typed here, or else the shop's own."),
  ownOrShops("permitUsed", "permit", "permit", "Limits from", "The permit typed here, or else the shop's own."),
  bathRow,
  // ACIDTO says no by itself where one of them is out of range.
  helper(
    {
      id: "planned",
      label: "Can be planned",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where volume, pH, target and acid are there.",
    },
    ({ volume, ph, target, acid }) =>
      blankIf([isNoNumber(volume), isNoNumber(ph), isNoNumber(target), isBlank(acid)], 1),
  ),
  helper(
    {
      id: "alkalinityUsed",
      label: "Alkalinity used",
      type: "text",
      width: 11,
      help: "As titrated, or else by the log with its unit, for a bare number is of another one.",
    },
    ({ alkalinity, alkalinityLogged }) =>
      when(isNumber(alkalinity), alkalinity)
        .when(isBlank(alkalinityLogged), "")
        .otherwise(joined(rounded(alkalinityLogged, 0), " mg/L")),
  ),
  helper(
    {
      id: "alkaliBrought",
      label: "Alkali brought",
      type: "number",
      unit: alkaliAdded,
      format: "0.000",
      width: 9,
      help: "Into the bath, by water and concentrate.",
    },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.alkaliBrought, bathRow),
  ),
  helper(
    {
      id: "phHolds",
      label: "pH holds it back",
      type: "text",
      words: [releaseState.limits, releaseState.ph, releaseState.below, releaseState.above],
      width: 14,
      help: "What the limits and the last pH say against it; blank for nothing.",
    },
    ({ bath, lowUsed, highUsed, lastPh, limitCheck }) =>
      blankIf(
        [isBlank(bath)],
        when(any(isBlank(lowUsed), isBlank(highUsed)), releaseState.limits)
          .when(isBlank(lastPh), releaseState.ph)
          .when(is(limitCheck, "below"), releaseState.below)
          .when(is(limitCheck, "above"), releaseState.above)
          .otherwise(""),
      ),
  ),
  helper(
    {
      id: "incomplete",
      label: "Record incomplete",
      type: "whole number",
      format: "0",
      width: 9,
      help: "1 where volume, place, permit or person of the release is missing.",
    },
    ({ bath, releasedVolume, point, initials, permitUsed }) =>
      blankIf(
        [isBlank(bath)],
        when(any(isNoNumber(releasedVolume), isBlank(point), isBlank(initials), isBlank(permitUsed)), 1).otherwise(0),
      ),
  ),
  helper(
    {
      id: "resultsHold",
      label: "Results hold it back",
      type: "text",
      words: [releaseState.over, releaseState.results],
      width: 14,
      help: "What the analyses say against it; blank for nothing.",
    },
    ({ bath, analysesResult }) =>
      blankIf(
        [isBlank(bath)],
        when(is(analysesResult, "over a limit"), releaseState.over)
          .when(any(isBlank(analysesResult), is(analysesResult, "awaited")), releaseState.results)
          .otherwise(""),
      ),
  ),
  helper(
    { id: "builderUsed", label: "Builder used", type: "text", width: 11, help: "Of the bath." },
    ({ bathRow }, { baths }) => blankIf([isBlank(bathRow)], cellAt(baths.builderUsed, bathRow)),
  ),
];
