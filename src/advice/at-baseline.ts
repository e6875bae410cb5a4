/** What a sample reads at the temperature of its bath's baseline, by the same function as the Readings sheet. */
import { temperature as temperatureUnit } from "../joblog/model/units-of.ts";
import { builders } from "../joblog/model/words.ts";
import { askNumber } from "./ask.ts";
import type { RowFacts } from "./bath-facts.ts";
import { alkalinityOf } from "./bath-values.ts";
import type { Finding } from "./finding.ts";
import type { LogContext } from "./log-context.ts";
import { degrees, ph as phFigure } from "./wording/figures.ts";

const unknown = "unknown";

/** A pH at the baseline's temperature; low and high span the builders where the bath's is unknown. */
interface Shifted {
  readonly best: number;
  readonly low: number;
  readonly high: number;
}

function shiftedBy(
  builder: string,
  bath: RowFacts<"baths">,
  ph: number,
  from: number,
  to: number,
  { system }: LogContext,
): number | undefined {
  const answer = askNumber("PHAT", ph, from, to, builder, alkalinityOf(bath), system);
  return answer.known ? answer.value : undefined;
}

function shifted(
  bath: RowFacts<"baths">,
  ph: number,
  from: number,
  to: number,
  context: LogContext,
): Shifted | undefined {
  const builder = bath.text("builderUsed") ?? unknown;
  const best = shiftedBy(builder, bath, ph, from, to, context);
  if (best === undefined) return undefined;
  const candidates = builder === unknown ? builders.filter((word) => word !== unknown) : [];
  const all = [best, ...candidates.flatMap((word) => shiftedBy(word, bath, ph, from, to, context) ?? [])];
  return { best, low: Math.min(...all), high: Math.max(...all) };
}

/** Whether a sample is as near to the baseline's temperature as the log's setting asks for. */
export function nearBaseline(bath: RowFacts<"baths">, temperature: number, { log }: LogContext): boolean {
  const baseline = bath.number("baselineTemperature");
  const gap = log.fields.temperatureGap;
  return baseline === undefined || typeof gap !== "number" || Math.abs(temperature - baseline) <= gap;
}

/**
 * The pH that an addition is judged by, to the hundredth; undefined for a sample too far from the
 * baseline's temperature. Without a baseline it is the pH as read.
 */
export function phForRecovery(
  bath: RowFacts<"baths">,
  ph: number,
  temperature: number | undefined,
  context: LogContext,
): number | undefined {
  const to = bath.number("baselineTemperature");
  if (to === undefined) return ph;
  if (temperature === undefined || !nearBaseline(bath, temperature, context)) return undefined;
  const best = shifted(bath, ph, temperature, to, context)?.best;
  return best === undefined ? undefined : Math.round(best * 100) / 100;
}

/** Says what the sample reads at the baseline's temperature where that differs from what the meter shows. */
export function shiftFinding(
  bath: RowFacts<"baths">,
  ph: number,
  temperature: number,
  context: LogContext,
): readonly Finding[] {
  const to = bath.number("baselineTemperature");
  const there = to === undefined ? undefined : shifted(bath, ph, temperature, to, context);
  if (to === undefined || there === undefined || phFigure(there.best) === phFigure(ph)) return [];
  const [low, best, high] = [phFigure(there.low), phFigure(there.best), phFigure(there.high)];
  const band = low === high ? "" : `, ${low} to ${high} as its builder is not known`;
  // A bath that has taken up soil and carbon dioxide moves less with temperature than the fresh one that the shift is worked out for.
  const worn = nearBaseline(bath, temperature, context) ? "" : " A used bath may be lower: cool a sample to be sure.";
  return [
    {
      tone: "plain",
      text: `At ${degrees(to)} ${temperatureUnit[context.system]}, as the baseline was read, this is about ${best}${band}.${worn}`,
    },
  ];
}
