import { TargetRegular } from "@fluentui/react-icons/svg/target";

import { askNumber } from "../../../../advice/ask.ts";
import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts, dropOf } from "../../../../advice/bath-values.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { shopsDrop } from "../../../../advice/shop-values.ts";
import { levelDoubts, levelProblems } from "../../../../advice/tank-limits.ts";
import { degrees, figure, ph } from "../../../../advice/wording/figures.ts";
import { mean } from "../../../../advice/wording/middle.ts";
import { median } from "../../../../core/numeric/median.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import { bench } from "../../../../joblog/model/words.ts";
import { hotSampleCaution } from "../../cautions.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, meterField } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";
import { baseline, benchTest, charge } from "../../step-forms.ts";
import { meterDoubts } from "../meter-check/meter-doubts.ts";
import { readingDetails } from "../reading/reading-details.ts";

const phKey = (set: number) => `ph${String(set)}` as const;

const temperatureKey = (set: number) => `temperature${String(set)}` as const;

/** A field for each sample besides those of a reading. */
type BaselineKey = ColumnId<"readings"> | ReturnType<typeof phKey | typeof temperatureKey>;

const repeats = { key: "readings", label: "Add a reading", least: 3, most: 6 } as const;

function setsOf(values: Draft): readonly number[] {
  const count = Number(values[repeats.key] ?? repeats.least);
  return Array.from({ length: count }, (_, index) => index + 1);
}

/** The gate: no baseline before an accepted bench test that is newer than the last concentrate. */
function gate(filled: FilledFields<BaselineKey>, context: LogContext): Meaning["blocked"] {
  const facts = bathFacts(context.log, filled.text("bath"));
  switch (facts?.text("benchState")) {
    case bench.noCharge:
      return { why: "This bath has no concentrate in the log yet. Record the charge first.", first: charge };
    case bench.untested:
      return {
        why: "No bench test since the last concentrate. Test every surface in the load first; a baseline before that would hold a bath that does not clean.",
        first: benchTest,
      };
    case bench.refused:
      return {
        why: "The last bench test did not pass on every surface. Raise the strength and test again before the baseline.",
        first: benchTest,
      };
    default:
      return undefined;
  }
}

interface Sample {
  readonly ph: number;
  readonly temperature: number | undefined;
}

/** Baseline readings of the log that count already: the sheet takes them and the new ones together. */
function countedAlready(bath: string | undefined, { log }: LogContext): readonly Sample[] {
  const rows = bath === undefined ? [] : rowsOfBath(log, "readings", bath).map(rowFacts);
  return rows
    .filter((row) => row.number("counted") === 1)
    .flatMap((row): Sample[] => {
      const read = row.number("phCorrected") ?? row.number("ph");
      return read === undefined ? [] : [{ ph: read, temperature: row.number("temperature") }];
    });
}

const temperaturesOf = (samples: readonly Sample[]): readonly number[] =>
  samples.flatMap(({ temperature }) => temperature ?? []);

/** The spread of the samples' temperatures where it is more than the log's setting allows; the sheet sets no baseline by such samples. */
function excessSpread(
  samples: readonly Sample[],
  { log }: LogContext,
): { readonly spread: number; readonly gap: number } | undefined {
  const gap = log.fields.temperatureGap;
  const temperatures = temperaturesOf(samples);
  if (typeof gap !== "number" || temperatures.length < 2) return undefined;
  const spread = Math.max(...temperatures) - Math.min(...temperatures);
  return spread > gap ? { spread, gap } : undefined;
}

function spreadProblem(samples: readonly Sample[], context: LogContext): readonly FieldProblem[] {
  const excess = excessSpread(samples, context);
  if (excess === undefined) return [];
  const { spread, gap } = excess;
  const unit = temperatureUnit[context.system];
  return [
    {
      key: "temperature1",
      message: `Sample: the temperatures differ by ${degrees(spread)} ${unit}. Allowed: ${degrees(gap)} ${unit}. Cool the samples alike.`,
    },
  ];
}

/** Samples of one mixed bath lie within hundredths; half a point apart, one was typed wrong or the bath is not mixed (common practice, no source). */
const farApart = 0.5;

function sampleSpreadDoubts(samples: readonly Sample[]): readonly string[] {
  const read = samples.map((sample) => sample.ph);
  const [low, high] = [Math.min(...read), Math.max(...read)];
  return high - low < farApart
    ? []
    : [`The readings lie between ${ph(low)} and ${ph(high)}. Was each typed right, and is the bath mixed?`];
}

function findingsOf(
  samples: readonly Sample[],
  filled: FilledFields<BaselineKey>,
  context: LogContext,
): readonly Finding[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const existing = facts?.number("baseline");
  const findings: Finding[] =
    existing === undefined
      ? []
      : [
          {
            tone: "watch",
            text: `This bath has a baseline of ${ph(existing)} already; readings recorded here join it.`,
          },
        ];
  const earlier = countedAlready(filled.text("bath"), context);
  const all = [...earlier, ...samples];
  if (samples.length < repeats.least) {
    const left = repeats.least - samples.length;
    return [
      ...findings,
      { tone: "plain", text: `${String(left)} more ${left === 1 ? "reading" : "readings"} for a median.` },
    ];
  }
  const excess = earlier.length === 0 ? undefined : excessSpread(all, context);
  const unit = temperatureUnit[context.system];
  if (excess !== undefined) {
    return [
      ...findings,
      {
        tone: "act",
        text: `With the ${String(earlier.length)} in the log the samples differ by ${degrees(excess.spread)} ${unit}, and ${degrees(excess.gap)} ${unit} is allowed: the bath has no baseline until those read apart are corrected.`,
      },
    ];
  }
  const middle = median(all.map((sample) => sample.ph));
  const trigger = askNumber("TRIGGER", middle, facts === undefined ? shopsDrop(context.log) : dropOf(facts));
  const temperatures = temperaturesOf(all);
  const at = temperatures.length === 0 ? "" : ` at ${degrees(mean(temperatures))} ${unit}`;
  const joined = earlier.length === 0 ? "" : `, ${String(earlier.length)} of them in the log already`;
  findings.push({ tone: "good", text: `Baseline ${ph(middle)}${at}: the median of ${String(all.length)}${joined}.` });
  if (trigger.known)
    findings.push({
      tone: "plain",
      text: `Top-up due at ${ph(trigger.value)} or under (drop allowed ${figure(middle - trigger.value, 2, 2)}).`,
    });
  const spread = Math.max(...samples.map((sample) => sample.ph)) - Math.min(...samples.map((sample) => sample.ph));
  // A pH meter in order repeats to about 0.05; a tenth between samples is a sign of poor mixing (common practice, no source).
  if (spread > 0.1)
    findings.push({
      tone: "watch",
      text: `The readings differ by ${figure(spread, 2, 2)}: is the bath mixed and the meter steady?`,
    });
  return findings;
}

/** Of one sample only, in the row of the first. */
const measuredOnce = { conductivity: undefined, pTitre: undefined, tTitre: undefined };

function meaning(filled: FilledFields<BaselineKey>, context: LogContext, values: Draft): Meaning {
  const bath = filled.text("bath");
  const samples = setsOf(values).flatMap((set): Sample[] => {
    const read = filled.number(phKey(set));
    return read === undefined ? [] : [{ ph: read, temperature: filled.number(temperatureKey(set)) }];
  });
  const blocked = gate(filled, context);
  return {
    findings: findingsOf(samples, filled, context),
    problems: [
      ...spreadProblem(samples, context),
      ...levelProblems("level", "Level", filled.number("level"), bath, context),
    ],
    doubts: [
      ...sampleSpreadDoubts(samples),
      ...meterDoubts(filled, true, context),
      ...levelDoubts(filled.number("level"), bath, context),
    ],
    rows: newRows(
      "readings",
      filled,
      context,
      samples.map(({ ph, temperature }, index) => ({
        purpose: "baseline",
        ph,
        temperature,
        ...(index === 0 ? {} : measuredOnce),
      })),
    ),
    recorded: `${String(samples.length)} baseline readings of bath ${bath ?? ""}`,
    ...(blocked === undefined ? {} : { blocked }),
  };
}

/** Three or more readings at once: the log takes their median as the number to come back to. */
export const baselineEntry: EntryForm<"baseline"> = {
  ...baseline,
  icon: TargetRegular,
  needs: "bath",
  purpose: "Three readings of cooled samples; the bath comes back to their median.",
  submit: "Record baseline",
  caution: hotSampleCaution,
  repeats,
  groups: (values, { log }) => [
    { fields: [field(log, "readings", "bath"), field(log, "readings", "when"), meterField(log, "readings")] },
    ...setsOf(values).map((set) => ({
      legend: `Reading ${String(set)}`,
      fields: [
        field(log, "readings", "ph", {
          key: phKey(set),
          label: `pH as read ${String(set)}`,
          required: set <= repeats.least,
        }),
        field(log, "readings", "temperature", {
          key: temperatureKey(set),
          label: `Sample ${String(set)}`,
          required: set <= repeats.least || (values[phKey(set)] ?? "") !== "",
        }),
      ],
    })),
    {
      legend: "More",
      folded: true,
      fields: readingDetails(log).filter(({ key }) => key !== "meter"),
    },
  ],
  proposals: (typed, context) => ({
    bath: typed["bath"] ?? context.bath ?? "",
    when: context.now,
    meter: String(context.log.rows.meterChecks.at(-1)?.cells.meter ?? ""),
  }),
  meaning,
};
