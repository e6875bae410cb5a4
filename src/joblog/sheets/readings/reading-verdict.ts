import { phAt } from "../../../../functions/ph/ph-at.ts";
import { trigger } from "../../../../functions/threshold/trigger.ts";
import { verdict } from "../../../../functions/threshold/verdict.ts";
import { topUpRange } from "../../../../functions/top-up/top-up-range.ts";
import { absolute, dividedBy, joined, minus } from "../../formula/arithmetic.ts";
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
  startsWith,
} from "../../formula/conditions.ts";
import { after, countWhere, otherThan, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { placeIn, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { bench, readingVerdict as words, verdictChanged } from "../../model/words.ts";
import { phCorrected } from "./reading-meter.ts";

const { computed } = columnsOf<"readings">();

type Reading = Row<"readings">;

/** Top-up figures only where the verdict asks for one and the sample was near the baseline's temperature. */
function topUp(id: string, label: string, place: number, help: string, tooWarm: string): ComputedColumn {
  const about = { id, label, type: "number", unit: volume, format: "0.000", width: 10, help } as const;
  return computed(about, (reading, { baths, named }) => {
    const bath = rowAt(baths, reading.bathRow);
    const range = call(topUpRange, {
      // The workbench's grid works out what an IF passes over: without a dose the function says no at once.
      opening_dose: when(is(reading.verdict, words.topUp), bath.openingDose).otherwise(""),
      baseline: bath.baseline,
      reading: reading.phCorrected,
      builder: bath.builderUsed,
      temperature: reading.temperature,
      alkalinity: bath.alkalinityUsed,
      house_share: named.houseShare,
      meter_accuracy: named.meterLimit,
      system: named.unitSystem,
    });
    const gap = absolute(minus(reading.temperature, bath.baselineTemperature));
    return blankIf(
      [isNot(reading.verdict, words.topUp), isBlank(reading.bathRow)],
      when(isBlank(bath.openingDose), "")
        .when(isOver(gap, named.temperatureGap), tooWarm)
        .otherwise(placeIn(range, place)),
    );
  });
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
      const { baseline } = rowAt(log.baths, reading.bathRow);
      return blankIf(
        incomparable(reading),
        blankIf([isBlank(baseline)], call(trigger, { baseline, ...triggerTerms(reading, log) })),
      );
    },
  ),
  computed(
    {
      id: "verdict",
      label: "Verdict",
      type: "text",
      width: 15,
      help: "Hold, near, top up, above baseline, or re-read where the temperature leaves it open.",
    },
    (reading, log) => {
      const { bath, bathRow, ph, purpose, temperature, counted, benchAtTime } = reading;
      const { baseline } = rowAt(log.baths, bathRow);
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
          .when(isBlank(baseline), words.noBaseline)
          .when(isNoNumber(temperature), words.noTemperature)
          .otherwise(call(verdict, { reading: reading.phCorrected, baseline, ...triggerTerms(reading, log) })),
      );
    },
  ),
  topUp("firstAddition", "First addition", 4, "Add this, mix, read again before adding more.", "re-read cooled"),
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
    (reading, log) => {
      const { baseline, baselineAsRead } = rowAt(log.baths, reading.bathRow);
      const unjudged = any(
        isBlank(reading.verdict),
        startsWith(reading.verdict, words.uncounted),
        is(reading.purpose, "baseline"),
        isNoNumber(reading.temperature),
      );
      const unchanged = when(isBlank(baseline), true).otherwise(
        all(equal(reading.ph, reading.phCorrected), equal(baseline, baselineAsRead)),
      );
      return when(unjudged, reading.verdict)
        .when(unchanged, reading.verdict)
        .otherwise(call(verdict, { reading: reading.ph, baseline: baselineAsRead, ...triggerTerms(reading, log) }));
    },
  ),
  computed(
    { id: "flag", label: "Drift", type: "text", width: 30, help: "Whether the meter's drift had hidden something." },
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
      width: 20,
      help:
        "What this sample would read there with a perfect meter, had the bath lost nothing. " +
        "For a hot sample of a used bath it is often a little high: cool it to be sure.",
    },
    (reading, { baths, named }) => {
      const bath = rowAt(baths, reading.bathRow);
      return blankIf(
        incomparable(reading),
        blankIf(
          [isBlank(bath.baseline)],
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
  topUp("topUpLow", "Top-up, low", 1, "Lowest likely top-up back to the baseline.", ""),
  topUp("topUpBest", "Top-up, best", 2, "Best estimate back to the baseline.", ""),
  topUp("topUpHigh", "Top-up, high", 3, "Highest likely top-up back to the baseline.", ""),
  computed(
    {
      id: "alkalinityRatio",
      label: "Total to free alkalinity",
      type: "number",
      format: "0.00",
      width: 11,
      help: "Total by free alkalinity, where both were titrated: climbs as soil soaps gather.",
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
      width: 18,
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
