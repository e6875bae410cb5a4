import type { ColumnId } from "../joblog/formula/log-names.ts";
import { meterVerdict } from "../joblog/model/words.ts";
import { askNumber } from "./ask.ts";
import { type RowFacts, rowFacts } from "./bath-facts.ts";
import type { FilledFields } from "./filled-fields.ts";
import type { LogContext } from "./log-context.ts";

/** Checks of a meter before a moment, in the order of time. */
export function checksBefore(
  meter: string | undefined,
  when: number,
  { log }: LogContext,
): readonly RowFacts<"meterChecks">[] {
  const time = (check: RowFacts<"meterChecks">): number => check.number("when") ?? Number.POSITIVE_INFINITY;
  return log.rows.meterChecks
    .map(rowFacts)
    .filter((check) => check.text("meter") === meter && time(check) < when)
    .sort((a, b) => time(a) - time(b));
}

/** The two buffers of a check, as the ids of their columns end. */
export const buffers = ["1", "2"] as const;

type Buffer = (typeof buffers)[number];

/** As found or as left less the buffer; rounded, or 10.06 in 10.01 would be out of a limit of 0.05. */
export function errorIn(
  buffer: Buffer,
  kind: "asFound" | "asLeft",
  filled: FilledFields<ColumnId<"meterChecks">>,
): number | undefined {
  const [read, known] = [filled.number(`${kind}${buffer}`), filled.number(`buffer${buffer}`)];
  return read === undefined || known === undefined ? undefined : Math.round((read - known) * 1000) / 1000;
}

/** The baths are alkaline: what counts for them is the buffer with the higher pH. */
export function foundError(filled: FilledFields<ColumnId<"meterChecks">>): number | undefined {
  const second = (filled.number("buffer2") ?? 0) >= (filled.number("buffer1") ?? 0);
  return errorIn(second ? "2" : "1", "asFound", filled);
}

/** Slope in % of the theoretical one; undefined without both voltages. */
export function slopeOf(
  filled: FilledFields<ColumnId<"meterChecks">>,
  { system }: LogContext,
): ReturnType<typeof askNumber> | undefined {
  const [one, mvOne, two, mvTwo] = (["buffer1", "mv1", "buffer2", "mv2"] as const).map(filled.number);
  if (one === undefined || mvOne === undefined || two === undefined || mvTwo === undefined || one === two)
    return undefined;
  return askNumber("METERSLOPE", one, mvOne, two, mvTwo, filled.number("temperature") ?? null, system);
}

/** The verdict against the shop's limits, in the order of the Meter sheet. */
export function verdictOf(filled: FilledFields<ColumnId<"meterChecks">>, context: LogContext): string {
  const { meterLimit, slopeLow, slopeHigh } = context.log.fields;
  const errors = [errorIn("1", "asFound", filled), errorIn("2", "asFound", filled)];
  if (typeof meterLimit === "number" && errors.some((error) => error !== undefined && Math.abs(error) > meterLimit))
    return meterVerdict.asFound;
  const slope = slopeOf(filled, context);
  const outside =
    slope?.known === true &&
    typeof slopeLow === "number" &&
    typeof slopeHigh === "number" &&
    (slope.value < slopeLow || slope.value > slopeHigh);
  if (outside) return meterVerdict.slope;
  return errors.includes(undefined) ? meterVerdict.incomplete : meterVerdict.within;
}
