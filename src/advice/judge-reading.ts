/** What a reading says about its bath, by the same functions with the same arguments as the Readings sheet. */
import { temperature as temperatureUnit, volume as volumeUnit } from "../joblog/model/units-of.ts";
import type { Answer } from "./answer.ts";
import { askNumber, askRow, askText } from "./ask.ts";
import { nearBaseline, shiftFinding } from "./at-baseline.ts";
import type { RowFacts } from "./bath-facts.ts";
import { alkalinityOf, dropOf } from "./bath-values.ts";
import type { Finding, Tone } from "./finding.ts";
import type { LogContext } from "./log-context.ts";
import { shopsHouseShare } from "./shop-values.ts";
import { amount, degrees, figure, ph as phFigure } from "./wording/figures.ts";

const toneOfVerdict = (verdict: string): Tone => {
  if (verdict === "hold") return "good";
  return verdict === "top up" ? "act" : "watch";
};

const wordsOfVerdict: Readonly<Record<string, string>> = {
  hold: "Hold: no top-up needed.",
  near: "Near the trigger: read again soon.",
  "top up": "Top up: at or under the trigger.",
};

/** No bath gains so much pH by itself, whatever drop its shop allows (common practice, no source). */
const farAbove = 0.5;

/** Low, best, high and first addition; undefined before there is an opening dose. */
export function topUpRange(
  bath: RowFacts<"baths">,
  baseline: number,
  ph: number,
  temperature: number | undefined,
  { log, system }: LogContext,
): Answer<readonly number[]> | undefined {
  const opening = bath.number("openingDose");
  if (opening === undefined) return undefined;
  const builder = bath.text("builderUsed") ?? null;
  const alkalinity = alkalinityOf(bath);
  return askRow(
    "TOPUPRANGE",
    opening,
    baseline,
    ph,
    builder,
    temperature ?? null,
    alkalinity,
    shopsHouseShare(log),
    system,
  );
}

function topUpFindings(
  bath: RowFacts<"baths">,
  baseline: number,
  ph: number,
  temperature: number,
  context: LogContext,
): readonly Finding[] {
  const { system } = context;
  const unit = volumeUnit[system];
  const baselineTemperature = bath.number("baselineTemperature");
  if (baselineTemperature === undefined) return [];
  if (!nearBaseline(bath, temperature, context)) {
    return [
      {
        tone: "watch",
        text: `To size the top-up, cool a sample to ${degrees(baselineTemperature)} ${temperatureUnit[system]} and read again.`,
      },
    ];
  }
  const range = topUpRange(bath, baseline, ph, temperature, context);
  if (range === undefined) return [];
  if (!range.known) return [{ tone: "act", text: range.why }];
  const [low = 0, best = 0, high = 0, first = 0] = range.value;
  return [
    { tone: "act", text: `First addition: ${amount(first)} ${unit}, mix, read again.` },
    {
      tone: "plain",
      text: `In all it may need ${figure(low, 1, 1)} to ${figure(high, 1, 1)} ${unit}, most likely ${figure(best, 1, 1)}.`,
    },
  ];
}

/**
 * Trigger at the sample's temperature, verdict, and what to add. After a top-up the baseline counts, not
 * the trigger, so a verdict that asks for nothing is left out.
 */
export function judgeReading(
  bath: RowFacts<"baths">,
  ph: number,
  temperature: number,
  afterTopUp: boolean,
  context: LogContext,
): readonly Finding[] {
  const { system } = context;
  const baseline = bath.number("baseline");
  if (baseline === undefined) return [{ tone: "plain", text: "No baseline yet, so there is nothing to compare with." }];
  const drop = dropOf(bath);
  const rest = [
    drop,
    bath.number("baselineTemperature") ?? null,
    temperature,
    bath.text("builderUsed") ?? null,
    alkalinityOf(bath),
    system,
  ] as const;
  const trigger = askNumber("TRIGGER", baseline, ...rest);
  const verdict = askText("VERDICT", ph, baseline, ...rest);
  const unit = temperatureUnit[system];
  const findings: Finding[] = [];
  const asksNothing = verdict.known && (verdict.value === "hold" || verdict.value === "near");
  if (verdict.known && !(afterTopUp && asksNothing)) {
    const text =
      wordsOfVerdict[verdict.value] ??
      `${verdict.value.charAt(0).toUpperCase()}${verdict.value.slice(1)}: too far from the baseline's temperature to judge.`;
    findings.push({ tone: toneOfVerdict(verdict.value), text });
  }
  if (!verdict.known) findings.push({ tone: "act", text: verdict.why });
  if (trigger.known)
    findings.push({
      tone: "plain",
      text: `Trigger at ${degrees(temperature)} ${unit}: ${phFigure(trigger.value)}. Baseline ${phFigure(baseline)}.`,
    });
  const above = trigger.known ? ph - (trigger.value + drop) : 0;
  if (above > farAbove)
    findings.push({
      tone: "watch",
      text: `That is ${phFigure(above)} above the baseline. Check that it was typed right, then the meter.`,
    });
  findings.push(...shiftFinding(bath, ph, temperature, context));
  if (verdict.known && verdict.value === "top up")
    findings.push(...topUpFindings(bath, baseline, ph, temperature, context));
  return findings;
}
