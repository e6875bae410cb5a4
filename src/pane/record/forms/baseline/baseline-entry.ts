import { TargetRegular } from "@fluentui/react-icons/svg/target";

import { levelDoubts, levelProblems } from "../../../../advice/amounts/tank-limits.ts";
import { findRow, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { completedRow, draftedLog, type DraftedRow } from "../../../../advice/drafted-row.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { baselineCells, givenBaseline } from "../../../../advice/readings/baseline-written.ts";
import { degrees, figure, ph } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../../../joblog/model/same-text.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import { bench } from "../../../../joblog/model/words.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, meterField } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";
import { baseline, benchTest, charge } from "../../step-forms.ts";
import { meterDoubts } from "../meter-check/meter-doubts.ts";
import { readingDetails } from "../reading/reading-details.ts";
import { scaleDoubts } from "../reading/reading-doubts.ts";
import { baselineChange } from "./baseline-change.ts";

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
        why: "No bench test since the last concentrate. Test every surface in the load first; a baseline taken before that could be of a bath that does not clean.",
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
function countedAlready(bath: string, { log }: LogContext): readonly Sample[] {
  return rowsOfBath(log, "readings", bath)
    .map(rowFacts)
    .filter((row) => row.number("counted") === 1)
    .flatMap((row): Sample[] => {
      const read = row.number("phCorrected");
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
      message: `Sample temp: the temperatures differ by ${degrees(spread)} ${unit}. Allowed: ${degrees(gap)} ${unit}. Cool the samples to the same temperature.`,
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

/** What the bath's row says once the readings are in the log: worked out with them, before anybody writes it down. */
interface WithReadings {
  readonly bath: SnapshotRow<"baths">;
  readonly after: DraftedRow<"baths">;
  /** The cells that are written down; undefined where the readings give no baseline. */
  readonly cells: LogRow<"baths"> | undefined;
}

type BaselineRows = ReturnType<typeof newRows<"readings">>;

function withReadings(
  rows: BaselineRows,
  bath: SnapshotRow<"baths">,
  filled: FilledFields<BaselineKey>,
  { log }: LogContext,
): WithReadings {
  const ofBaseline = (row: SnapshotRow<"readings">): boolean =>
    row.cells.counted === 1 && isSameText(String(row.cells.bath ?? ""), String(bath.cells.bath ?? ""));
  const earlier = log.rows.readings.filter(ofBaseline);
  const drafted = draftedLog(
    log,
    rows,
    (_, cells) => cells === bath.cells || earlier.some((row) => row.cells === cells),
  );
  const after = drafted.standing("baths", bath);
  const given = givenBaseline(after);
  const counted = rows.filter((_, index) => drafted.added("readings", index).number("counted") === 1);
  const from = [...earlier.map(({ cells }) => cells.id), ...counted.map(({ row }) => row.id)];
  const cells =
    given === undefined
      ? undefined
      : baselineCells(given, { at: filled.number("when"), by: filled.text("initials"), from: from.map(String) });
  return { bath, after, cells };
}

/** What is said of samples that make a baseline. */
function baselineFindings(
  samples: readonly Sample[],
  { bath, after, cells }: WithReadings,
  context: LogContext,
): readonly Finding[] {
  const unit = temperatureUnit[context.system];
  const before = rowFacts(bath);
  const [count, earlier] = [after.number("baselineReadings") ?? 0, before.number("baselineReadings") ?? 0];
  const excess = excessSpread([...countedAlready(before.text("bath") ?? "", context), ...samples], context);
  const given = givenBaseline(after);
  if (given === undefined || cells === undefined)
    return earlier === 0 || excess === undefined
      ? []
      : [
          {
            tone: "act",
            text: `With the ${String(earlier)} in the log the samples differ by ${degrees(excess.spread)} ${unit}, and ${degrees(excess.gap)} ${unit} is allowed: no baseline is written down until those read apart are corrected.`,
          },
        ];
  const trigger = completedRow(context.log, "baths", bath, cells).number("trigger");
  const joined = earlier === 0 ? "" : `, ${String(earlier)} of them in the log already`;
  const findings: Finding[] = [
    {
      tone: "good",
      text: `Baseline ${ph(given.baseline)} at ${degrees(given.temperature)} ${unit}: the median of ${String(count)}${joined}. It is written down in the bath's row.`,
    },
  ];
  if (trigger !== undefined)
    findings.push({
      tone: "plain",
      text: `Top-up due at ${ph(trigger)} or under (drop allowed ${figure(given.baseline - trigger, 2, 2)}).`,
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

function existingFinding(bath: SnapshotRow<"baths"> | undefined): readonly Finding[] {
  const facts = bath === undefined ? undefined : rowFacts(bath);
  const existing = facts?.number("baseline");
  if (facts === undefined || existing === undefined) return [];
  const become =
    (facts.number("baselineReadings") ?? 0) === 0
      ? "what is recorded here takes its place"
      : "readings recorded here join it";
  return [{ tone: "watch", text: `This bath has a baseline of ${ph(existing)} already; ${become}.` }];
}

function findingsOf(
  samples: readonly Sample[],
  bath: SnapshotRow<"baths"> | undefined,
  withThem: WithReadings | undefined,
  context: LogContext,
): readonly Finding[] {
  const findings = existingFinding(bath);
  if (samples.length < repeats.least) {
    const left = repeats.least - samples.length;
    return [
      ...findings,
      { tone: "plain", text: `${String(left)} more ${left === 1 ? "reading" : "readings"} for a median.` },
    ];
  }
  return withThem === undefined ? findings : [...findings, ...baselineFindings(samples, withThem, context)];
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
  const rows = newRows(
    "readings",
    filled,
    context,
    samples.map(({ ph, temperature }, index) => ({
      purpose: "baseline",
      ph,
      temperature,
      ...(index === 0 ? {} : measuredOnce),
    })),
  );
  const ofBath = bath === undefined ? undefined : findRow(context.log, "baths", "bath", bath);
  const withThem =
    ofBath === undefined || samples.length < repeats.least ? undefined : withReadings(rows, ofBath, filled, context);
  const cells = withThem?.cells;
  const written = typeof cells?.baseline === "number" ? `, baseline ${ph(cells.baseline)} written down` : "";
  return {
    findings: findingsOf(samples, ofBath, withThem, context),
    problems: [
      ...spreadProblem(samples, context),
      ...levelProblems("level", "Level", filled.number("level"), bath, context),
    ],
    doubts: [
      ...sampleSpreadDoubts(samples),
      ...setsOf(values).flatMap((set) =>
        scaleDoubts(filled.number(temperatureKey(set)), values[temperatureKey(set)], context.system),
      ),
      ...meterDoubts(filled, true, context),
      ...levelDoubts(filled.number("level"), bath, context),
    ],
    rows,
    ...(ofBath === undefined || cells === undefined ? {} : { changes: [baselineChange(ofBath, cells)] }),
    recorded: `${String(samples.length)} baseline readings of bath ${bath ?? ""}${written}`,
    ...(blocked === undefined ? {} : { blocked }),
  };
}

/** Three or more readings at once: their median is written down as the number to come back to. */
export const baselineEntry: EntryForm<"baseline"> = {
  ...baseline,
  icon: TargetRegular,
  needs: "bath",
  purpose: "Three readings of cooled samples; the bath comes back to their median.",
  submit: "Record baseline",
  repeats,
  groups: (values, { log }) => [
    { fields: [field(log, "readings", "bath"), field(log, "readings", "when"), meterField(log, "readings")] },
    ...setsOf(values).map((set) => ({
      legend: `Reading ${String(set)}`,
      fields: [
        field(log, "readings", "ph", {
          key: phKey(set),
          label: `pH of reading ${String(set)}`,
          required: set <= repeats.least,
        }),
        field(log, "readings", "temperature", {
          key: temperatureKey(set),
          label: `Sample temp of reading ${String(set)}`,
          required: set <= repeats.least || (values[phKey(set)] ?? "") !== "",
        }),
      ],
    })),
    {
      legend: "More details",
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
