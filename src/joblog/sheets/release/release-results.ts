import { acidTo } from "../../../../functions/discharge/acid-to.ts";
import { corrosive } from "../../../../functions/discharge/corrosive.ts";
import { dischargeCheck } from "../../../../functions/discharge/discharge-check.ts";
import { acidStages } from "../../../core/discharge/acid-stages.ts";
import { placesAmongLimits } from "../../../core/discharge/release-limits.ts";
import { dividedBy, joined, largest, plus, rounded, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  type Condition,
  equal,
  is,
  isBlank,
  isFilled,
  isNoNumber,
  isNumber,
  isOver,
} from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import { litersInUnit } from "../../formula/liters-in-unit.ts";
import type { ColumnId, FieldId, Log, Row } from "../../formula/log-names.ts";
import { cellAt, rowAt } from "../../formula/lookups.ts";
import { milligramsPerEquivalent } from "../../formula/milligrams-per-equivalent.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { acidAmount, hardness } from "../../model/units-of.ts";
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

/** Without these there is no acid to work out; ACIDTO says no by itself where one of them is out of range. */
function unplanned({ volume, ph, target, acid }: Row<"releases">): readonly [Condition, ...Condition[]] {
  return [isNoNumber(volume), isNoNumber(ph), isNoNumber(target), isBlank(acid)];
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
        unplanned(row),
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
        when(any(isBlank(row.lowUsed), isBlank(row.highUsed)), releaseState.limits)
          .when(isBlank(row.lastPh), releaseState.ph)
          .when(is(row.limitCheck, "below"), releaseState.below)
          .when(is(row.limitCheck, "above"), releaseState.above)
          .when(is(row.analysesResult, "over a limit"), releaseState.over)
          .when(any(isBlank(row.analysesResult), is(row.analysesResult, "awaited")), releaseState.results)
          .when(isNoNumber(row.releasedAt), releaseState.entered)
          .when(
            any(isNoNumber(row.releasedVolume), isBlank(row.point), isBlank(row.initials), isBlank(row.permitUsed)),
            releaseState.incomplete,
          )
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
    ({ bathRow, volume }, log) => {
      const { alkaliBrought, solutionLeft } = rowAt(log.baths, bathRow);
      const liters = times(plus(volume, solutionLeft), litersInUnit(log));
      return blankIf(
        [isBlank(bathRow), isNoNumber(volume)],
        when(isBlank(alkaliBrought), "")
          .when(equal(volume, 0), "")
          .otherwise(dividedBy(times(milligramsPerEquivalent, alkaliBrought), liters)),
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
      // With its unit, for a bare number is of another one.
      const logged = joined(rounded(row.alkalinityLogged, 0), " mg/L");
      const alkalinity = when(isNumber(row.alkalinity), row.alkalinity).otherwise(logged);
      const neither = all(isNoNumber(row.alkalinity), isBlank(row.alkalinityLogged));
      return blankIf(unplanned(row), blankIf([neither], neededAcid(row, log, alkalinity)));
    },
  ),
  helper(
    { id: "acidByPh", label: "Acid by the pH", ...acidColumn, help: "The least that the reading calls for." },
    (row, log) => blankIf(unplanned(row), neededAcid(row, log)),
  ),
  ownOrShops("lowUsed", "limitLow", "sewerLow", "Low limit, pH", "The limit typed here, or else the shop's own."),
  ownOrShops("highUsed", "limitHigh", "sewerHigh", "High limit, pH", "The limit typed here, or else the shop's own."),
  ownOrShops("permitUsed", "permit", "permit", "Limits from", "The permit typed here, or else the shop's own."),
  bathRow,
  helper(
    { id: "builderUsed", label: "Builder used", type: "text", width: 11, help: "Of the bath." },
    ({ bathRow }, { baths }) => blankIf([isBlank(bathRow)], cellAt(baths.builderUsed, bathRow)),
  ),
];
