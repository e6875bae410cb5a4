import { dividedBy, largest, minus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, is, isBlank, isFilled, isNoNumber, isNumber, startsWith } from "../../formula/conditions.ts";
import { sumWhere } from "../../formula/criteria.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { days, volume } from "../../model/units-of.ts";
import { accounts, baselineStanding, bathState, bench, readingVerdict } from "../../model/words.ts";
import { bathBaseline, hasNoBaseline } from "./bath-baseline.ts";
import { bathCare } from "./bath-care.ts";
import { bathRounds } from "./bath-rounds.ts";

const { computed, helper } = columnsOf<"baths">();

const [toClaims] = accounts;

/** Where the bath stands: bench tests, baseline, last reading, top-ups, cost, what comes next. */
export const bathStanding: readonly ComputedColumn[] = [
  ...bathBaseline,
  computed(
    {
      id: "lastReading",
      label: "Last pH",
      type: "number",
      format: "0.00",
      width: 8,
      help: "Latest reading that is not of a rinse, the meter's drift taken out.",
    },
    ({ lastReadingRow }, { readings }) =>
      blankIf([isBlank(lastReadingRow)], rowAt(readings, lastReadingRow).phCorrected),
  ),
  computed(
    { id: "lastReadingAt", label: "Last read", type: "date and time", width: 16, help: "When that was." },
    ({ lastReadingRow }, { readings }) => blankIf([isBlank(lastReadingRow)], rowAt(readings, lastReadingRow).when),
  ),
  computed(
    { id: "lastVerdict", label: "Last verdict", type: "text", width: 18, help: "What the latest reading says." },
    ({ lastReadingRow }, { readings }) => blankIf([isBlank(lastReadingRow)], rowAt(readings, lastReadingRow).verdict),
  ),
  computed(
    {
      id: "topUpTotal",
      label: "Topped up in all",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 10,
      help: "Concentrate added as top-ups. Corrective doses and the concentrate of a make-up are not counted: they make up for something other than soil.",
    },
    ({ bath, openingDose }, { additions }) =>
      blankIf([isBlank(openingDose)], sumWhere(additions, "amount", { bath, kind: "concentrate", purpose: "top-up" })),
  ),
  computed(
    {
      id: "topUpShare",
      label: "Topped up, of opening dose",
      type: "share",
      format: "0%",
      width: 12,
      help: "Top-ups divided by the opening dose; corrective doses are not counted.",
    },
    ({ openingDose, topUpTotal }) => blankIf([isBlank(openingDose)], dividedBy(topUpTotal, openingDose)),
  ),
  ...bathRounds,
  computed(
    {
      id: "cost",
      label: "Additions charged to claims",
      type: "money",
      format: "#,##0.00",
      width: 12,
      help: "Concentrate and water of this bath; the shop's own account is left out.",
    },
    ({ bath }, { additions }) => blankIf([isBlank(bath)], sumWhere(additions, "cost", { bath, account: toClaims })),
  ),
  computed(
    {
      id: "daysOpen",
      label: "Open",
      type: "number",
      unit: days,
      format: "0.0",
      width: 8,
      help: "To the change-out or, before that, to the latest entry.",
    },
    ({ opened, closed, lastReadingAt, lastAddition }) => {
      const lastEntry = largest(lastReadingAt, lastAddition, opened);
      return blankIf([isNoNumber(opened)], minus(when(isNumber(closed), closed).otherwise(lastEntry), opened));
    },
  ),
  ...bathCare,
];

/** Stands beside the bath's name, where a person looks first. */
export const bathStateColumn: ComputedColumn = computed(
  {
    id: "state",
    label: "State",
    type: "text",
    words: Object.values(bathState),
    width: 11,
    help: "What comes next: charge, bench test, baseline, in use, top up, re-read, closed.",
  },
  (bath) =>
    blankIf(
      [isBlank(bath.bath)],
      when(isNumber(bath.closed), bathState.closed)
        .when(isBlank(bath.openingDose), bathState.charge)
        .when(isFilled(bath.baselineAsks), bath.baselineAsks)
        .when(equal(bath.unread, 1), bathState.reRead)
        .otherwise(bath.verdictAsks),
    ),
);

/** What comes next by the baseline and by the last verdict, each by itself. */
export const bathStateHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "baselineAsks",
      label: "Baseline asks for",
      type: "text",
      words: [bathState.baseline, bathState.benchTest],
      width: 10,
      help: "What has to be done for a baseline that stands; blank where it does.",
    },
    (bath) =>
      blankIf(
        [isBlank(bath.bath)],
        when(is(bath.baselineState, baselineStanding.unwritten), bathState.baseline)
          .when(
            any(hasNoBaseline(bath), is(bath.baselineState, baselineStanding.older)),
            when(is(bath.benchState, bench.accepted), bathState.baseline).otherwise(bathState.benchTest),
          )
          .otherwise(""),
      ),
  ),
  helper(
    {
      id: "verdictAsks",
      label: "Last verdict asks for",
      type: "text",
      words: [bathState.reRead, bathState.topUp, bathState.inUse],
      width: 10,
      help: "What comes next by the latest reading alone.",
    },
    ({ bath, lastVerdict }) =>
      blankIf(
        [isBlank(bath)],
        when(startsWith(lastVerdict, bathState.reRead), bathState.reRead)
          .when(is(lastVerdict, readingVerdict.check), bathState.reRead)
          .when(is(lastVerdict, readingVerdict.topUp), bathState.topUp)
          .when(is(lastVerdict, readingVerdict.notBack), bathState.topUp)
          .otherwise(bathState.inUse),
      ),
  ),
];
