/** What a reading says about its bath, as its row on the Readings sheet will say it. */
import { temperature as temperatureUnit, volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { readingVerdict } from "../../joblog/model/words.ts";
import type { RowFacts } from "../bath-facts.ts";
import { dropOf } from "../bath-values.ts";
import type { DraftedRow } from "../drafted-row.ts";
import type { Finding, Tone } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { amount, degrees, figure, ph as phFigure } from "../wording/figures.ts";
import { shiftFinding } from "./at-baseline.ts";

const toneOfVerdict = (verdict: string): Tone => {
  if (verdict === "hold") return "good";
  return verdict === "top up" ? "act" : "watch";
};

const wordsOfVerdict: Readonly<Record<string, string>> = {
  hold: "Hold: no top-up needed.",
  near: "Near the trigger: read again soon.",
  "top up": "Top up: at or under the trigger.",
  "above baseline": "Above the baseline: no top-up needed.",
};

function topUpFindings(
  bath: RowFacts<"baths">,
  reading: DraftedRow<"readings">,
  { system }: LogContext,
): readonly Finding[] {
  const unit = volumeUnit[system];
  // After a top-up the row of the addition says what is missing.
  if (reading.text("verdict") === readingVerdict.notBack) return [];
  const first = reading.answer("firstAddition");
  if (first === undefined && reading.text("firstAddition") !== undefined) {
    return [
      {
        tone: "watch",
        text: `To size the top-up, cool a sample to ${degrees(bath.number("baselineTemperature") ?? 0)} ${temperatureUnit[system]} and read again.`,
      },
    ];
  }
  if (first === undefined) return [];
  if (!first.known) return [{ tone: "act", text: first.why }];
  const [low = 0, best = 0, high = 0] = (["topUpLow", "topUpBest", "topUpHigh"] as const).map(reading.number);
  return [
    { tone: "act", text: `First addition: ${amount(first.value)} ${unit}, mix, read again.` },
    {
      tone: "plain",
      text: `In all it may need ${figure(low, 1, 1)} to ${figure(high, 1, 1)} ${unit}, most likely ${figure(best, 1, 1)}.`,
    },
  ];
}

/** The verdict in a sentence; after a top-up one that asks for nothing is left out: the baseline counts then, not the trigger. */
function verdictFindings(reading: DraftedRow<"readings">, afterTopUp: boolean): readonly Finding[] {
  const refusal = reading.refusal("verdict");
  if (refusal !== undefined) return [{ tone: "act", text: refusal }];
  const verdict = reading.text("verdict");
  const asksNothing = [readingVerdict.hold, readingVerdict.near, readingVerdict.above, readingVerdict.notBack].some(
    (word) => word === verdict,
  );
  // A reading that is not counted lacks what the form asks for.
  if (verdict === undefined || verdict.startsWith(readingVerdict.uncounted) || (afterTopUp && asksNothing)) return [];
  const text =
    wordsOfVerdict[verdict] ??
    `${verdict.charAt(0).toUpperCase()}${verdict.slice(1)}: too far from the baseline's temperature to judge.`;
  return [{ tone: toneOfVerdict(verdict), text }];
}

/** Trigger at the sample's temperature, verdict, and what to add. */
export function judgeReading(
  bath: RowFacts<"baths">,
  reading: DraftedRow<"readings">,
  afterTopUp: boolean,
  context: LogContext,
): readonly Finding[] {
  const { system } = context;
  const baseline = bath.number("baseline");
  const given = bath.number("baselineGiven");
  if (baseline === undefined)
    return [
      given === undefined
        ? { tone: "plain", text: "No baseline yet, so there is nothing to compare with." }
        : {
            tone: "watch",
            text: `Its readings give a baseline of ${phFigure(given)} that nobody has written down: do that first, so that this one can be judged.`,
          },
    ];
  const trigger = reading.number("trigger");
  const [ph, temperature] = [reading.number("phCorrected"), reading.number("temperature")];
  const above = trigger === undefined || ph === undefined ? 0 : ph - (trigger + dropOf(bath));
  return [
    ...verdictFindings(reading, afterTopUp),
    ...(trigger === undefined
      ? []
      : [
          {
            tone: "plain" as const,
            text: `Trigger at ${degrees(temperature ?? 0)} ${temperatureUnit[system]}: ${phFigure(trigger)}. Baseline ${phFigure(baseline)}.`,
          },
        ]),
    ...(reading.text("verdict") === readingVerdict.above
      ? [
          {
            tone: "watch" as const,
            text: `That is ${phFigure(above)} above the baseline. Check that it was typed right, then the meter.`,
          },
        ]
      : []),
    ...shiftFinding(bath, reading, context),
    ...topUpFindings(bath, reading, context),
  ];
}
