import { median } from "../core/numeric/median.ts";
import { askNumber, askText } from "./ask.ts";
import { type RowFacts, rowFacts } from "./bath-facts.ts";
import { alkalinityOf, bathFacts, dropOf } from "./bath-values.ts";
import type { LogContext } from "./log-context.ts";

/** A reading that a check reaches back to. */
interface ReachedReading {
  readonly id: string;
  readonly bath: string;
  readonly when: number;
  readonly was: number;
  readonly becomes: number;
  readonly verdictWas: string | undefined;
  readonly verdictBecomes: string | undefined;
}

/** A baseline that moves because its readings do. */
interface MovedBaseline {
  readonly bath: string;
  readonly was: number;
  readonly becomes: number;
}

export interface Reach {
  readonly since: number;
  readonly readings: readonly ReachedReading[];
  readonly baselines: readonly MovedBaseline[];
}

/** A check about to be recorded: its time, the error found in the higher buffer, and the meter's check before. */
export interface NewCheck {
  readonly meter: string;
  readonly when: number;
  readonly found: number;
  readonly before: RowFacts<"meterChecks">;
}

const shown = (ph: number): number => Math.round(ph * 100) / 100;

const currentPh = (reading: RowFacts<"readings">): number | undefined =>
  reading.number("phCorrected") ?? reading.number("ph");

function correctedBy(check: NewCheck, since: number, reading: RowFacts<"readings">): number | undefined {
  const [ph, when] = [reading.number("ph"), reading.number("when")];
  const left = check.before.number("left") ?? 0;
  if (ph === undefined || when === undefined) return undefined;
  const fixed = askNumber("DRIFTFIX", ph, when, [[since, check.when]], [[0, check.found - left]]);
  return fixed.known ? shown(fixed.value - left) : undefined;
}

/** A bath's baseline with some of its readings corrected: the median of those that count. */
function baselineWith(bath: string, corrected: ReadonlyMap<string, number>, { log }: LogContext): number | undefined {
  const counting = log.rows.readings
    .map(rowFacts)
    .filter((reading) => reading.text("bath") === bath && reading.number("counted") === 1);
  const values = counting.flatMap((reading) => corrected.get(reading.text("id") ?? "") ?? currentPh(reading) ?? []);
  return values.length < 3 ? undefined : median(values);
}

function verdictBy(
  bath: RowFacts<"baths"> | undefined,
  baseline: number | undefined,
  ph: number,
  reading: RowFacts<"readings">,
  { system }: LogContext,
): string | undefined {
  const temperature = reading.number("temperature");
  if (bath === undefined || baseline === undefined || temperature === undefined) return undefined;
  const verdict = askText(
    "VERDICT",
    ph,
    baseline,
    dropOf(bath),
    bath.number("baselineTemperature") ?? null,
    temperature,
    bath.text("builderUsed") ?? null,
    alkalinityOf(bath),
    system,
  );
  return verdict.known ? verdict.value : undefined;
}

/**
 * What a check will change in the readings since the meter's check before, by the functions and in the
 * steps of the Readings sheet: the drift is taken as even in between, and what the meter showed stays.
 */
export function reachOf(check: NewCheck, context: LogContext): Reach | undefined {
  const since = check.before.number("when");
  if (since === undefined) return undefined;
  const reached = context.log.rows.readings.map(rowFacts).filter((reading) => {
    const when = reading.number("when");
    return (
      reading.text("meter") === check.meter &&
      reading.number("ph") !== undefined &&
      when !== undefined &&
      when >= since &&
      when < check.when
    );
  });
  const corrected = new Map(
    reached.flatMap((reading) => {
      const ph = correctedBy(check, since, reading);
      return ph === undefined ? [] : [[reading.text("id") ?? "", ph] as const];
    }),
  );
  const baselineOf = new Map(
    context.log.rows.baths.map((row) => {
      const bath = String(row.cells.bath ?? "");
      return [
        bath,
        { was: rowFacts(row).number("baseline"), becomes: baselineWith(bath, corrected, context) },
      ] as const;
    }),
  );
  const judged = (reading: RowFacts<"readings">): boolean =>
    !["baseline", "rinse"].includes(reading.text("purpose") ?? "");
  const readings = reached.map((reading): ReachedReading => {
    const [id, bath] = [reading.text("id") ?? "", reading.text("bath") ?? ""];
    const was = currentPh(reading) ?? 0;
    const becomes = corrected.get(id) ?? was;
    const baseline = baselineOf.get(bath);
    const facts = bathFacts(context.log, bath);
    const verdict = (ph: number, from: number | undefined): string | undefined =>
      judged(reading) && baseline?.was !== undefined ? verdictBy(facts, from, ph, reading, context) : undefined;
    return {
      id,
      bath,
      when: reading.number("when") ?? 0,
      was,
      becomes,
      verdictWas: verdict(was, baseline?.was),
      verdictBecomes: verdict(becomes, baseline?.becomes),
    };
  });
  const baselines = [...baselineOf].flatMap(([bath, { was, becomes }]) =>
    was === undefined || becomes === undefined || shown(was) === shown(becomes) ? [] : [{ bath, was, becomes }],
  );
  return { since, readings, baselines };
}
