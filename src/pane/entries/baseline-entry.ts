import { median } from "../../core/median.ts";
import { bench } from "../../joblog/words.ts";
import { temperature as temperatureUnit } from "../../joblog/units-of.ts";
import { degrees, figure, ph } from "../fields/figures.ts";
import { mean } from "../fields/middle.ts";
import { askNumber } from "../store/ask.ts";
import { bathFacts } from "./bath-values.ts";
import { hotSampleCaution } from "./cautions.ts";
import type { Draft, EntryContext, EntryForm, FieldProblem, FilledFields, Finding, Meaning } from "./entry-form.ts";
import { entryNames } from "./entry-names.ts";
import { field, initialsField, meterField } from "./fields-of.ts";
import { meterDoubts } from "./meter-doubts.ts";
import { nextIds } from "./next-id.ts";
import { levelDoubts, levelProblems } from "./tank-limits.ts";

const repeats = { key: "readings", label: "Add a reading", least: 3, most: 6 } as const;

function setsOf(values: Draft): readonly number[] {
  const count = Number(values[repeats.key] ?? repeats.least);
  return Array.from({ length: count }, (_, index) => index + 1);
}

/** The gate: no baseline before an accepted bench test that is newer than the last concentrate. */
function gate(filled: FilledFields, context: EntryContext): Meaning["blocked"] {
  const facts = bathFacts(context.log, filled.text("bath"));
  switch (facts?.text("benchState")) {
    case bench.noCharge:
      return { why: "This bath has no concentrate in the log yet. Record the charge first.", first: "charge" };
    case bench.untested:
      return { why: "No bench test since the last concentrate. Test every surface in the load first; a baseline before that would hold a bath that does not clean.", first: "bench test" };
    case bench.refused:
      return { why: "The last bench test did not pass on every surface. Raise the strength and test again before the baseline.", first: "bench test" };
    default:
      return undefined;
  }
}

interface Sample {
  readonly set: number;
  readonly ph: number;
  readonly temperature: number | undefined;
}

function spreadProblem(samples: readonly Sample[], context: EntryContext): readonly FieldProblem[] {
  const gap = context.log.fields["temperatureGap"];
  const temperatures = samples.flatMap((sample) => (sample.temperature === undefined ? [] : [sample.temperature]));
  if (typeof gap !== "number" || temperatures.length < 2) return [];
  const spread = Math.max(...temperatures) - Math.min(...temperatures);
  if (spread <= gap) return [];
  const unit = temperatureUnit[context.system];
  return [{ key: "temperature1", message: `Sample: the temperatures differ by ${degrees(spread)} ${unit}. Allowed: ${degrees(gap)} ${unit}. Cool the samples alike.` }];
}

/** Samples of one mixed bath lie within hundredths; half a point apart, one was typed wrong or the bath is not mixed (common practice, no source). */
const farApart = 0.5;

function sampleSpreadDoubts(samples: readonly Sample[]): readonly string[] {
  const read = samples.map((sample) => sample.ph);
  const [low, high] = [Math.min(...read), Math.max(...read)];
  return high - low < farApart ? [] : [`The readings lie between ${ph(low)} and ${ph(high)}. Was each typed right, and is the bath mixed?`];
}

function findingsOf(samples: readonly Sample[], filled: FilledFields, context: EntryContext): readonly Finding[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const existing = facts?.number("baseline");
  const findings: Finding[] =
    existing === undefined ? [] : [{ tone: "watch", text: `This bath has a baseline of ${ph(existing)} already; readings recorded here join it.` }];
  if (samples.length < repeats.least) {
    const left = repeats.least - samples.length;
    return [...findings, { tone: "plain", text: `${String(left)} more ${left === 1 ? "reading" : "readings"} for a median.` }];
  }
  const middle = median(samples.map((sample) => sample.ph));
  const drop = facts?.number("dropAllowed");
  const trigger = askNumber("TRIGGER", middle, drop ?? null);
  const temperatures = samples.flatMap((sample) => (sample.temperature === undefined ? [] : [sample.temperature]));
  const at = temperatures.length === 0 ? "" : ` at ${degrees(mean(temperatures))} ${temperatureUnit[context.system]}`;
  findings.push({ tone: "good", text: `Baseline ${ph(middle)}${at}: the median of ${String(samples.length)}.` });
  if (trigger.known) findings.push({ tone: "plain", text: `Top-up due at ${ph(trigger.value)} or under (drop allowed ${figure(middle - trigger.value, 2, 2)}).` });
  const spread = Math.max(...samples.map((sample) => sample.ph)) - Math.min(...samples.map((sample) => sample.ph));
  // A pH meter in order repeats to about 0.05; a tenth between samples is a sign of poor mixing (common practice, no source).
  if (spread > 0.1) findings.push({ tone: "watch", text: `The readings differ by ${figure(spread, 2, 2)}: is the bath mixed and the meter steady?` });
  return findings;
}

function meaning(filled: FilledFields, context: EntryContext, values: Draft): Meaning {
  const bath = filled.text("bath");
  const samples = setsOf(values).flatMap((set): Sample[] => {
    const read = filled.number(`ph${String(set)}`);
    return read === undefined ? [] : [{ set, ph: read, temperature: filled.number(`temperature${String(set)}`) }];
  });
  const ids = nextIds(context.log, "readings", samples.length);
  const blocked = gate(filled, context);
  return {
    findings: findingsOf(samples, filled, context),
    problems: [...spreadProblem(samples, context), ...levelProblems("level", "Level", filled.number("level"), bath, context)],
    doubts: [...sampleSpreadDoubts(samples), ...meterDoubts(filled, true, context), ...levelDoubts(filled.number("level"), bath, context)],
    rows: samples.map((sample, index) => ({
      table: "readings",
      row: {
        id: ids[index],
        bath,
        when: filled.number("when"),
        purpose: "baseline",
        ph: sample.ph,
        temperature: sample.temperature,
        meter: filled.text("meter"),
        level: filled.number("level"),
        initials: filled.text("initials"),
        note: filled.text("note"),
        ...(index === 0 ? { conductivity: filled.number("conductivity"), pTitre: filled.number("pTitre"), tTitre: filled.number("tTitre") } : {}),
      },
    })),
    recorded: `${String(samples.length)} baseline readings of bath ${bath ?? ""}`,
    ...(blocked === undefined ? {} : { blocked }),
  };
}

/** Three or more readings at once: the log takes their median as the number to come back to. */
export const baselineEntry: EntryForm = {
  id: "baseline",
  title: entryNames.baseline,
  purpose: "Three readings of cooled samples; the bath comes back to their median.",
  submit: "Record baseline",
  caution: hotSampleCaution,
  repeats,
  groups: (values, { log }) => [
    { fields: [field(log, "readings", "bath"), field(log, "readings", "when"), meterField(log, "readings")] },
    ...setsOf(values).map((set) => ({
      legend: `Reading ${String(set)}`,
      fields: [
        field(log, "readings", "ph", { key: `ph${String(set)}`, label: `pH as read ${String(set)}`, required: set <= repeats.least }),
        field(log, "readings", "temperature", { key: `temperature${String(set)}`, label: `Sample ${String(set)}`, required: set <= repeats.least || (values[`ph${String(set)}`] ?? "") !== "" }),
      ],
    })),
    {
      legend: "More",
      folded: true,
      fields: [...["level", "conductivity", "pTitre", "tTitre"].map((id) => field(log, "readings", id)), initialsField(log, "readings"), field(log, "readings", "note")],
    },
  ],
  proposals: (typed, context) => ({ bath: typed["bath"] ?? context.bath ?? "", when: context.now, meter: String(context.log.rows.meterChecks.at(-1)?.cells["meter"] ?? "") }),
  meaning,
};
