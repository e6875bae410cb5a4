import { bufferPh } from "../../../../../functions/ph/buffer-ph.ts";
import { askNumber } from "../../../../advice/ask.ts";
import { type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { buffers } from "../../../../advice/meter/meter-facts.ts";
import { type Reach, reachOf } from "../../../../advice/meter/meter-reach.ts";
import { degrees, figure, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import { meterVerdict } from "../../../../joblog/model/words.ts";

const signed = (value: number): string => `${value > 0 ? "+" : value < 0 ? "−" : ""}${phFigure(Math.abs(value))}`;

function errorFinding(check: DraftedRow<"meterChecks">): readonly Finding[] {
  const words = ([1, 2] as const).flatMap((buffer) => {
    const [error, value] = [check.number(`error${buffer}`), check.number(`buffer${buffer}`)];
    return error === undefined ? [] : [`${signed(error)} in ${phFigure(value ?? 0)}`];
  });
  return words.length === 0 ? [] : [{ tone: "plain", text: `As found: ${words.join(", ")}.` }];
}

/** Bottles of one name differ by a hundredth; less than this is no shift by temperature. */
const tellingShift = 0.015;

/** A buffer moves with temperature; the bottle's own table wins. */
function bufferFindings(filled: FilledFields<ColumnId<"meterChecks">>, { system }: LogContext): readonly Finding[] {
  const temperature = filled.number("temperature");
  if (temperature === undefined) return [];
  return buffers.flatMap((buffer): readonly Finding[] => {
    const value = filled.number(`buffer${buffer}`);
    const certified =
      value === undefined ? undefined : askNumber(bufferPh, { buffer: figure(value, 2), temperature, system });
    if (value === undefined || certified?.known !== true || Math.abs(certified.value - value) < tellingShift) return [];
    return [
      {
        tone: "watch",
        text: `A buffer of ${phFigure(value)} is about ${phFigure(certified.value)} at ${degrees(temperature)} ${temperatureUnit[system]}. Take the value from the table on your bottle.`,
      },
    ];
  });
}

function verdictFindings(check: DraftedRow<"meterChecks">, { log }: LogContext): readonly Finding[] {
  const slope = check.answer("slope");
  const { meterLimit, slopeLow, slopeHigh } = log.fields;
  const verdict = check.text("verdict") ?? meterVerdict.incomplete;
  const limits = ` (limits: ${String(meterLimit)} pH, slope ${String(slopeLow)} to ${String(slopeHigh)}%)`;
  const said = `${verdict.charAt(0).toUpperCase()}${verdict.slice(1)}`;
  const findings: Finding[] = [];
  if (slope !== undefined)
    findings.push(
      slope.known
        ? { tone: "plain", text: `Slope ${figure(slope.value, 1, 1)}% of the theoretical.` }
        : { tone: "act", text: slope.why },
    );
  if (verdict === meterVerdict.within) findings.push({ tone: "good", text: `${said}${limits}.` });
  else if (verdict !== meterVerdict.incomplete)
    findings.push({
      tone: "act",
      text: `${said}${limits}. Clean the electrode and adjust, write down the as-left values, then check again.`,
    });
  return findings;
}

function readingsFinding({ since, readings }: Reach): Finding {
  const changes = readings.map(({ was, becomes }) => becomes - was);
  const largest = changes.reduce((most, change) => (Math.abs(change) > Math.abs(most) ? change : most), 0);
  const count = `${String(readings.length)} ${readings.length === 1 ? "reading" : "readings"}`;
  return Math.abs(largest) < 0.005
    ? { tone: "plain", text: `Reaches back to ${count} since ${shortMoment(since)}: none changes.` }
    : {
        tone: "watch",
        text: `Reaches back to ${count} since ${shortMoment(since)}: up to ${phFigure(Math.abs(largest))} ${largest < 0 ? "lower" : "higher"} once the drift is taken out, at each reading's own pH by the straight line through both buffers, evenly over time. What the meter showed stays in the log beside it.`,
      };
}

/** An electrode's error is not straight above pH 10, where the baths are. */
function beyondBuffers(check: DraftedRow<"meterChecks">, { readings }: Reach): readonly Finding[] {
  const upper = Math.max(check.number("buffer1") ?? 0, check.number("buffer2") ?? 0);
  const beyond = readings.some(({ becomes, was }) => was > upper && Math.abs(becomes - was) >= 0.005);
  return beyond
    ? [
        {
          tone: "plain",
          text: `Above the buffer ${phFigure(upper)} that line is drawn on and uncertain: look again at readings near a limit.`,
        },
      ]
    : [];
}

/** Which readings, verdicts and baselines change, named one by one. */
function reachFindings(
  check: DraftedRow<"meterChecks">,
  row: LogRow<"meterChecks">,
  { log }: LogContext,
): readonly Finding[] {
  if (check.number("found") === undefined || check.text("verdict") === undefined) return [];
  const reach = reachOf(log, row);
  if (reach === undefined)
    return [{ tone: "plain", text: "No check of this meter before: earlier readings stay as read." }];
  const flips = reach.readings.filter(
    ({ verdictWas, verdictBecomes }) => verdictWas !== undefined && verdictWas !== verdictBecomes,
  );
  return [
    readingsFinding(reach),
    ...beyondBuffers(check, reach),
    ...reach.baselines.map(({ bath, was, becomes }): Finding => ({
      tone: "watch",
      text: `Baseline of ${bath}: its readings then give ${phFigure(becomes)}; ${phFigure(was)} is written down. The next step in Now writes the other down.`,
    })),
    ...flips.map(({ id, bath, when: at, was, becomes, verdictWas, verdictBecomes }): Finding => ({
      tone: "act",
      text: `Reading ${id} of bath ${bath}, ${shortMoment(at)}: ${phFigure(was)} becomes ${phFigure(becomes)}, "${verdictWas ?? ""}" becomes "${verdictBecomes ?? ""}".`,
    })),
  ];
}

/** What the meter check form says while it is filled in. */
export function meterFindings(
  row: LogRow<"meterChecks">,
  filled: FilledFields<ColumnId<"meterChecks">>,
  context: LogContext,
): readonly Finding[] {
  const check = draftedRow(context.log, "meterChecks", row);
  const [low, high] = [filled.number("buffer1"), filled.number("buffer2")].sort((a, b) => (a ?? 0) - (b ?? 0));
  const acid = low !== undefined && high !== undefined && high < 8;
  return [
    ...errorFinding(check),
    ...bufferFindings(filled, context),
    ...verdictFindings(check, context),
    ...(acid
      ? [{ tone: "watch" as const, text: "Bracket with 7 and 10: these buffers say little about an alkaline bath." }]
      : []),
    ...reachFindings(check, row, context),
  ];
}
