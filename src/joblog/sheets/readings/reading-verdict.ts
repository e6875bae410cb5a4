import { phAt } from "../../../../functions/ph/ph-at.ts";
import { trigger } from "../../../../functions/threshold/trigger.ts";
import { verdict } from "../../../../functions/threshold/verdict.ts";
import { recovered } from "../../../../functions/top-up/recovered.ts";
import { absolute, dividedBy, joined, minus, plus, rounded, times } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  type Condition,
  equal,
  is,
  isAtMost,
  isBlank,
  isNoNumber,
  isNot,
  isNumber,
  isOver,
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
import { asReadOf, hasNoBaseline } from "../baths/bath-baseline.ts";
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
    (reading, { baths, named }) => {
      const bath = rowAt(baths, reading.bathRow);
      const asked = is(reading.againstTrigger, words.topUp);
      const gap = absolute(minus(reading.temperature, bath.baselineTemperature));
      const share = topUpShareOf(
        {
          asked,
          baseline: bath.baseline,
          reading: reading.phCorrected,
          builder: bath.builderUsed,
          temperature: reading.temperature,
          alkalinity: bath.alkalinityUsed,
          house_share: named.houseShare,
          meter_accuracy: named.meterLimit,
          system: named.unitSystem,
        },
        place,
      );
      return when(isNot(reading.againstTrigger, words.topUp), "")
        .when(isOver(gap, named.temperatureGap), "")
        .otherwise(share);
    },
  );
}

/** What the row of the top-up says is still missing. */
function stillMissing({ bath, lastConcentrate }: Reading, { additions }: Log): Expression {
  const next = sumWhere(additions, "nextAddition", {
    bath,
    kind: "concentrate",
    when: [from(lastConcentrate), upTo(lastConcentrate)],
  });
  return blankIf([equal(next, 0)], next);
}

/** What the trigger depends on besides the baseline, as its functions take it. */
function triggerTerms(reading: Reading, { baths, named }: Log) {
  const bath = rowAt(baths, reading.bathRow);
  return {
    drop: bath.dropUsed,
    baseline_temperature: bath.baselineTemperature,
    reading_temperature: reading.temperature,
    builder: bath.builderUsed,
    alkalinity: bath.alkalinityUsed,
    system: named.unitSystem,
  };
}

/** Such a row says nothing about its bath at another temperature. */
function incomparable({ bathRow, temperature, ph, purpose }: Reading): readonly [Condition, ...Condition[]] {
  return [isBlank(bathRow), isNoNumber(temperature), isNoNumber(ph), isAtMost(ph, 0), is(purpose, "rinse")];
}

/** After a top-up a reading that asks for nothing counts by the baseline, as the row of the addition has it. */
function overlaid(judged: Expression, cameBack: Expression): Expression {
  const asksNothing = any(is(judged, words.hold), is(judged, words.near));
  return when(all(is(cameBack, recovery.short), asksNothing), words.notBack).otherwise(judged);
}

/** How such a bath came back; blank for any other reading. */
function recoveryOf(
  reading: Reading,
  after: Expression,
  baseline: (bath: Row<"baths">) => Expression,
  { baths, named }: Log,
): Expression {
  const bath = rowAt(baths, reading.bathRow);
  return when(isNot(reading.purpose, "after top-up"), "")
    .when(isNoNumber(reading.chartablePh), "")
    .when(hasNoBaseline(bath), "")
    .otherwise(call(recovered, { after: rounded(after, 2), baseline: baseline(bath), tolerance: named.tolerance }));
}

const uncounted = (why: string | Expression): string | Expression =>
  typeof why === "string" ? `${words.uncounted}: ${why}` : joined(`${words.uncounted}: `, why);

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
    (reading, log) => {
      const bath = rowAt(log.baths, reading.bathRow);
      return blankIf(
        incomparable(reading),
        blankIf([hasNoBaseline(bath)], call(trigger, { baseline: bath.baseline, ...triggerTerms(reading, log) })),
      );
    },
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
    (reading, log) =>
      // Where another program kept the helper's value alone, its "" is a blank cell, which would show here as 0.
      when(is(reading.verdict, words.notBack), stillMissing(reading, log))
        .when(isBlank(reading.topUpFirst), "")
        .otherwise(reading.topUpFirst),
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
    (reading, { baths, named }) => {
      const bath = rowAt(baths, reading.bathRow);
      return blankIf(
        incomparable(reading),
        blankIf(
          [hasNoBaseline(bath)],
          call(phAt, {
            ph: reading.phCorrected,
            from_temperature: reading.temperature,
            to_temperature: bath.baselineTemperature,
            builder: bath.builderUsed,
            alkalinity: bath.alkalinityUsed,
            system: named.unitSystem,
          }),
        ),
      );
    },
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
    (reading, { benchTests }) => {
      const since = { bath: reading.bath, when: [after(reading.lastConcentrate), upTo(reading.when)] };
      const refused = countWhere(benchTests, {
        ...since,
        supersededAt: after(reading.when),
        result: otherThan("pass"),
      });
      return blankIf(
        [isBlank(reading.lastConcentrate)],
        when(equal(reading.lastConcentrate, 0), bench.noCharge)
          .when(equal(countWhere(benchTests, since), 0), bench.untested)
          .when(isOver(refused, 0), bench.refused)
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
      const bath = rowAt(log.baths, reading.bathRow);
      return blankIf(
        [...incomparable(reading), isNoNumber(reading.when), is(reading.purpose, "baseline"), isBlank(reading.purpose)],
        blankIf(
          [hasNoBaseline(bath)],
          call(verdict, { reading: reading.phCorrected, baseline: bath.baseline, ...triggerTerms(reading, log) }),
        ),
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
    (reading, log) => {
      const { bath, bathRow, ph, purpose, temperature, counted, benchAtTime } = reading;
      const whyUncounted = when(isNoNumber(temperature), words.noTemperature)
        .when(isNot(benchAtTime, bench.accepted), benchAtTime)
        .otherwise("older than the opening dose");
      const asBaseline = when(equal(counted, 1), words.baseline).otherwise(uncounted(whyUncounted));
      return blankIf(
        [isBlank(bath), isBlank(ph), isBlank(purpose), is(purpose, "rinse")],
        when(isBlank(bathRow), uncounted("bath missing"))
          .when(isNoNumber(ph), uncounted("pH is no number"))
          .when(isNoNumber(reading.when), uncounted("when is no date"))
          .when(isAtMost(ph, 0), uncounted("pH is 0 or below"))
          .when(is(purpose, "baseline"), asBaseline)
          .when(isToBeChecked(reading), words.check)
          .when(hasNoBaseline(rowAt(log.baths, bathRow)), words.noBaseline)
          .when(isNoNumber(temperature), words.noTemperature)
          .otherwise(reading.againstTrigger),
      );
    },
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
      const bath = rowAt(log.baths, reading.bathRow);
      const unchanged = all(equal(reading.ph, reading.phCorrected), equal(bath.baseline, asReadOf(bath)));
      return when(isBlank(reading.againstTrigger), "")
        .when(unchanged, reading.againstTrigger)
        .otherwise(call(verdict, { reading: reading.ph, baseline: asReadOf(bath), ...triggerTerms(reading, log) }));
    },
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
    (reading, log) => recoveryOf(reading, reading.chartablePh, ({ baseline }) => baseline, log),
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
      recoveryOf(reading, plus(reading.chartablePh, minus(reading.ph, reading.phCorrected)), asReadOf, log),
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
