import { phAt } from "../../../../functions/ph/ph-at.ts";
import { trigger } from "../../../../functions/threshold/trigger.ts";
import { verdict } from "../../../../functions/threshold/verdict.ts";
import { recovered } from "../../../../functions/top-up/recovered.ts";
import { dividedBy, joined, minus, plus, rounded, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  equal,
  is,
  isAtMost,
  isBlank,
  isFilled,
  isNoNumber,
  isNot,
  isNumber,
  isOver,
  unequal,
} from "../../formula/conditions.ts";
import { after, countWhere, from, otherThan, sumWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { topUpPlaces, topUpShareOf } from "../../formula/top-up-shares.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { bench, readingVerdict as words, recovery, verdictChanged } from "../../model/words.ts";
import { isToBeChecked } from "./reading-check.ts";
import { phCorrected } from "./reading-meter.ts";

const { computed, helper } = columnsOf<"readings">();

type Reading = Row<"readings">;

type TopUpShare = "shareLow" | "shareBest" | "shareHigh" | "shareFirst";

/** Top-up figures only where the verdict asks for one and the sample was near the baseline's temperature. */
function topUp(
  maker: typeof computed,
  about: Readonly<Record<"id" | "label" | "help" | "tooWarm", string>> & { readonly share: TopUpShare },
): ComputedColumn {
  const { tooWarm, share, ...named } = about;
  const column = { ...named, type: "number", unit: volume, format: "0.000", width: 10 } as const;
  return maker(column, (reading, { baths }) => {
    const { openingDose } = rowAt(baths, reading.bathRow);
    return when(isBlank(reading.bathRow), "")
      .when(isNot(reading.judged, words.topUp), "")
      .when(isBlank(openingDose), "")
      .when(isBlank(reading[share]), tooWarm)
      .otherwise(times(openingDose, reading[share]));
  });
}

const shareColumn = { type: "share", format: "0.00%", width: 9 } as const;

/** The same as a share of the opening dose; blank where the sample was too far from the baseline's temperature. */
function topUpShare(id: TopUpShare, label: string, place: number): ComputedColumn {
  return helper(
    {
      id,
      label,
      ...shareColumn,
      help: "Of the opening dose; blank where the sample was too warm or too cold to size it.",
    },
    (reading, { named }) =>
      blankIf(
        [isBlank(reading.sizable)],
        topUpShareOf(
          {
            opening_dose: reading.sizable,
            baseline: reading.bathBaseline,
            reading: reading.phCorrected,
            builder: reading.bathBuilder,
            temperature: reading.temperature,
            alkalinity: reading.bathAlkalinity,
            house_share: named.houseShare,
            meter_accuracy: named.meterLimit,
            system: named.unitSystem,
          },
          place,
        ),
      ),
  );
}

/** What the trigger depends on besides the baseline, as its functions take it. */
const triggerTerms = (reading: Reading, { named }: Log) => ({
  drop: reading.bathDrop,
  baseline_temperature: reading.bathTemperature,
  reading_temperature: reading.temperature,
  builder: reading.bathBuilder,
  alkalinity: reading.bathAlkalinity,
  system: named.unitSystem,
});

/** Bench tests of the bath between its last concentrate and the reading. */
const testedSince = (reading: Reading) => ({
  bath: reading.bath,
  when: [after(reading.lastConcentrate), upTo(reading.when)],
});

/** After a top-up a reading that asks for nothing counts by the baseline, as the row of the addition has it. */
function overlaid(judged: Expression, cameBack: Expression): Expression {
  const asksNothing = any(is(judged, words.hold), is(judged, words.near));
  return when(all(is(cameBack, recovery.short), asksNothing), words.notBack).otherwise(judged);
}

/** How such a bath came back; blank for any other reading. */
function recoveryOf(reading: Reading, after: Expression, baseline: Expression, { named }: Log): Expression {
  return when(isNot(reading.purpose, "after top-up"), "")
    .when(isNoNumber(reading.chartablePh), "")
    .when(isBlank(baseline), "")
    .otherwise(call(recovered, { after: rounded(after, 2), baseline, tolerance: named.tolerance }));
}

/** What a reading says about its bath: stands beside pH and temperature. */
export const readingVerdict: readonly ComputedColumn[] = [
  computed(
    {
      id: "trigger",
      label: "Trigger here",
      type: "number",
      format: "0.00",
      width: 8,
      help: "The trigger as this bath would read it at this sample's temperature.",
    },
    (reading, log) =>
      blankIf(
        [isBlank(reading.comparable)],
        call(trigger, { baseline: reading.bathBaseline, ...triggerTerms(reading, log) }),
      ),
  ),
  computed(
    {
      id: "verdict",
      label: "Verdict",
      type: "text",
      width: 15,
      help: "Hold, near, top up, above baseline, or re-read where the temperature leaves it open; after a top-up, not back yet where it is short of the baseline; check the reading where it looks like a slip.",
    },
    ({ judged, cameBack }) => overlaid(judged, cameBack),
  ),
  computed(
    {
      id: "firstAddition",
      label: "First addition",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 10,
      help: "Add this, mix, read again before adding more; after a top-up that fell short, what its row says to add then.",
    },
    ({ verdict: now, missingThen, topUpFirst }) =>
      // Where another program kept the helper's value alone, its "" is a blank cell, which would show here as 0.
      when(is(now, words.notBack), blankIf([equal(missingThen, 0)], missingThen))
        .when(isBlank(topUpFirst), "")
        .otherwise(topUpFirst),
  ),
];

/** What the reading said before the meter's next check was known. */
export const readingDrift: readonly ComputedColumn[] = [
  phCorrected,
  computed(
    {
      id: "verdictAsRead",
      label: "Verdict as read",
      type: "text",
      width: 15,
      help: "What the same reading says with the meter's drift left in, against the baseline as read.",
    },
    ({ judgedAsRead, cameBackAsRead }) => overlaid(judgedAsRead, cameBackAsRead),
  ),
  computed(
    { id: "flag", label: "Drift", type: "text", width: 18, help: "Whether the meter's drift had hidden something." },
    ({ verdictAsRead, verdict: now }) =>
      blankIf([equal(verdictAsRead, now)], joined(verdictChanged, ": ", now, " instead of ", verdictAsRead)),
  ),
];

/** The figures behind it, to the right of what a person types. */
export const readingFigures: readonly ComputedColumn[] = [
  computed(
    {
      id: "phAtBaseline",
      label: "pH at the baseline's temperature, about",
      type: "number",
      format: "0.00",
      width: 15,
      help:
        "What this sample would read there with a perfect meter, had the bath lost nothing. " +
        "For a hot sample of a used bath it is often a little high: cool it to be sure.",
    },
    (reading, { named }) =>
      blankIf(
        [isBlank(reading.comparable)],
        call(phAt, {
          ph: reading.phCorrected,
          from_temperature: reading.temperature,
          to_temperature: reading.bathTemperature,
          builder: reading.bathBuilder,
          alkalinity: reading.bathAlkalinity,
          system: named.unitSystem,
        }),
      ),
  ),
  topUp(computed, {
    id: "topUpLow",
    label: "Top-up, low",
    help: "Lowest likely top-up back to the baseline.",
    tooWarm: "",
    share: "shareLow",
  }),
  topUp(computed, {
    id: "topUpBest",
    label: "Top-up, best",
    help: "Best estimate back to the baseline.",
    tooWarm: "",
    share: "shareBest",
  }),
  topUp(computed, {
    id: "topUpHigh",
    label: "Top-up, high",
    help: "Highest likely top-up back to the baseline.",
    tooWarm: "",
    share: "shareHigh",
  }),
  computed(
    {
      id: "alkalinityRatio",
      label: "Total to free alkalinity",
      type: "number",
      format: "0.00",
      width: 11,
      help: "T over P, where both were titrated: it rises as soap from soil builds up.",
    },
    ({ pTitre, tTitre }) => {
      const ratio = when(isOver(pTitre, 0), dividedBy(tTitre, pTitre)).otherwise("");
      return when(all(isNumber(pTitre), isNumber(tTitre)), ratio).otherwise("");
    },
  ),
  computed(
    {
      id: "benchAtTime",
      label: "Bench tests then",
      type: "text",
      words: Object.values(bench),
      width: 14,
      help: "How the bath's bench tests stood when this was read.",
    },
    (reading) => {
      return blankIf(
        [isBlank(reading.lastConcentrate)],
        when(equal(reading.lastConcentrate, 0), bench.noCharge)
          .when(equal(reading.benchTestsThen, 0), bench.untested)
          .when(isOver(reading.benchTestsRefused, 0), bench.refused)
          .otherwise(bench.accepted),
      );
    },
  ),
];

/** What the verdicts and the first addition are put together from: a cell of its own for each function that waits for another. */
export const readingVerdictHelpers: readonly ComputedColumn[] = [
  // Depends on cells that somebody typed alone: one more addition or bench test leaves it as it is.
  helper(
    {
      id: "againstTrigger",
      label: "Against the trigger",
      type: "text",
      width: 12,
      help: "What the trigger says of the reading; blank where it is not asked.",
    },
    (reading, log) => {
      const { comparable, bathBaseline, purpose } = reading;
      return blankIf(
        [isBlank(comparable), isNoNumber(reading.when), is(purpose, "baseline"), isBlank(purpose)],
        call(verdict, { reading: reading.phCorrected, baseline: bathBaseline, ...triggerTerms(reading, log) }),
      );
    },
  ),
  helper(
    {
      id: "judged",
      label: "Before recovery",
      type: "text",
      width: 12,
      help: "The verdict, before a reading after a top-up is held to the baseline.",
    },
    (reading) => {
      const { entered, purpose, uncounted, bathBaseline, temperature } = reading;
      return blankIf(
        [isBlank(entered)],
        when(isFilled(uncounted), joined(`${words.uncounted}: `, uncounted))
          .when(is(purpose, "baseline"), words.baseline)
          .when(isToBeChecked(reading), words.check)
          .when(isBlank(bathBaseline), words.noBaseline)
          .when(isNoNumber(temperature), words.noTemperature)
          .otherwise(reading.againstTrigger),
      );
    },
  ),
  helper(
    {
      id: "entered",
      label: "Entered",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where bath, pH and purpose are there, and it is not a rinse.",
    },
    ({ bath, ph, purpose }) => blankIf([isBlank(bath), isBlank(ph), isBlank(purpose), is(purpose, "rinse")], 1),
  ),
  helper(
    {
      id: "uncounted",
      label: "Not counted",
      type: "text",
      width: 14,
      help: "Why the row is no reading of its bath, or gives no baseline where it should; blank where it counts.",
    },
    (reading) => {
      const { entered, bathRow, ph, purpose, counted, noBaselineFrom } = reading;
      return blankIf(
        [isBlank(entered)],
        when(isBlank(bathRow), "bath missing")
          .when(isNoNumber(ph), "pH is no number")
          .when(isNoNumber(reading.when), "when is no date")
          .when(isAtMost(ph, 0), "pH is 0 or below")
          .when(all(is(purpose, "baseline"), unequal(counted, 1)), noBaselineFrom)
          .otherwise(""),
      );
    },
  ),
  helper(
    {
      id: "noBaselineFrom",
      label: "No baseline because",
      type: "text",
      width: 14,
      help: "Why a reading for the baseline would not count.",
    },
    ({ purpose, temperature, benchAtTime }) =>
      blankIf(
        [isNot(purpose, "baseline")],
        when(isNoNumber(temperature), words.noTemperature)
          .when(isNot(benchAtTime, bench.accepted), benchAtTime)
          .otherwise("older than the opening dose"),
      ),
  ),
  helper(
    {
      id: "benchTestsThen",
      label: "Bench tests since",
      type: "whole number",
      format: "0",
      width: 8,
      help: "How many there were between the last concentrate and this reading.",
    },
    (reading, { benchTests }) =>
      blankIf([isBlank(reading.lastConcentrate)], countWhere(benchTests, testedSince(reading))),
  ),
  helper(
    {
      id: "benchTestsRefused",
      label: "Bench tests not passed",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Of those the ones that still stood and had not passed.",
    },
    (reading, { benchTests }) =>
      blankIf(
        [isBlank(reading.lastConcentrate)],
        countWhere(benchTests, {
          ...testedSince(reading),
          supersededAt: after(reading.when),
          result: otherThan("pass"),
        }),
      ),
  ),
  helper(
    {
      id: "missingThen",
      label: "Still missing",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 9,
      help: "Where a top-up fell short: what its row says to add then; 0 for nothing.",
    },
    ({ bath, verdict: now, lastConcentrate }, { additions }) =>
      blankIf(
        [isNot(now, words.notBack)],
        sumWhere(additions, "nextAddition", {
          bath,
          kind: "concentrate",
          when: [from(lastConcentrate), upTo(lastConcentrate)],
        }),
      ),
  ),
  helper(
    {
      id: "againstTriggerAsRead",
      label: "Against the trigger, as read",
      type: "text",
      width: 12,
      help: "The same with the meter's drift left in.",
    },
    (reading, log) => {
      const { ph, againstTrigger, driftLeft, bathBaselineAsRead: baseline } = reading;
      return when(isBlank(driftLeft), againstTrigger).otherwise(
        call(verdict, { reading: ph, baseline, ...triggerTerms(reading, log) }),
      );
    },
  ),
  helper(
    {
      id: "driftLeft",
      label: "Drift to leave in",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where the reading or its baseline differs with the meter's drift left in.",
    },
    ({ ph, phCorrected, againstTrigger, bathBaseline, bathBaselineAsRead }) =>
      blankIf([isBlank(againstTrigger), all(equal(ph, phCorrected), equal(bathBaseline, bathBaselineAsRead))], 1),
  ),
  helper(
    {
      id: "judgedAsRead",
      label: "Before recovery, as read",
      type: "text",
      width: 12,
      help: "As the column before recovery, with the meter's drift left in.",
    },
    ({ judged, againstTriggerAsRead }) =>
      when(any(isBlank(againstTriggerAsRead), is(judged, words.check)), judged).otherwise(againstTriggerAsRead),
  ),
  helper(
    {
      id: "cameBack",
      label: "Came back",
      type: "text",
      words: Object.values(recovery),
      width: 10,
      help: "After a top-up: recovered, short or over, as the addition's own row says.",
    },
    (reading, log) => recoveryOf(reading, reading.chartablePh, reading.bathBaseline, log),
  ),
  helper(
    {
      id: "cameBackAsRead",
      label: "Came back, as read",
      type: "text",
      words: Object.values(recovery),
      width: 10,
      help: "The same with the meter's drift left in.",
    },
    (reading, log) =>
      recoveryOf(
        reading,
        plus(reading.chartablePh, minus(reading.ph, reading.phCorrected)),
        reading.bathBaselineAsRead,
        log,
      ),
  ),
  topUp(helper, {
    id: "topUpFirst",
    label: "First part",
    help: "First addition of a top-up that is due.",
    tooWarm: "re-read cooled",
    share: "shareFirst",
  }),
  topUpShare("shareLow", "Top-up share, low", topUpPlaces.low),
  topUpShare("shareBest", "Top-up share, best", topUpPlaces.best),
  topUpShare("shareHigh", "Top-up share, high", topUpPlaces.high),
  topUpShare("shareFirst", "Top-up share, first", topUpPlaces.first),
];
