import { verdict } from "../../../../../functions/threshold/verdict.ts";
import { askText } from "../../../../advice/ask.ts";
import { type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { alkalinityOf, dropOf } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { degrees, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import { isFarFrom, type Sample } from "../../../../core/bath/reading-slip.ts";
import { toSi } from "../../../../core/units/convert.ts";
import { unitBySymbol } from "../../../../core/units/find-unit.ts";
import { parseNumber } from "../../../../core/units/parse-number.ts";
import { kelvin, ph } from "../../../../core/units/quantity.ts";
import { unclearNumber } from "../../../../core/units/unclear-number.ts";
import type { UnitSystem } from "../../../../core/units/unit-system.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import type { Draft } from "../../entry-form.ts";

/** 30 °C: more than a sample hot from the tank differs from one cooled to the room. */
const farInTemperature: Readonly<Record<UnitSystem, number>> = { US: 54, metric: 30, imperial: 30 };

/** A temperature typed without its scale, colder than a sample is but warm in °C: a slip that turns the verdict around. */
export function scaleDoubts(
  temperature: number | undefined,
  typed: string | undefined,
  system: UnitSystem,
): readonly string[] {
  if (temperature === undefined || parseNumber(typed ?? "").read !== "number") return [];
  const unclear = unclearNumber("temperature", temperature, system);
  if (unclear === undefined) return [];
  return [
    `${degrees(temperature)} ${temperatureUnit[system]} is cold for a sample. If it was read in °C, write "${unclear.readings[0]}" (${unclear.slip}).`,
  ];
}

/** What the pH itself says of a temperature without its scale: the verdict that it would get in °C, where that can be. */
function verdictDoubts(
  bath: RowFacts<"baths"> | undefined,
  ph: number | undefined,
  temperature: number | undefined,
  { system }: LogContext,
): readonly string[] {
  const baselineTemperature = bath?.number("baselineTemperature");
  if (bath === undefined || baselineTemperature === undefined) return [];
  const asked = {
    reading: ph,
    baseline: bath.number("baseline"),
    drop: dropOf(bath),
    baseline_temperature: `${String(baselineTemperature)} ${temperatureUnit[system]}`,
    reading_temperature: temperature,
    builder: bath.text("builderUsed"),
    alkalinity: alkalinityOf(bath),
  };
  const [named, unnamed] = [askText(verdict, { ...asked, system }), askText(verdict, asked)];
  return system === "US" && named.known && !unnamed.known ? [unnamed.why] : [];
}

const halfMinute = 0.5 / (24 * 60);

/** The readings that this one follows, all of one minute; one entered late follows earlier ones than the last. */
function readingsBefore(filled: FilledFields<ColumnId<"readings">>, { log }: LogContext) {
  const [bath, when] = [filled.text("bath"), filled.number("when")];
  if (bath === undefined || when === undefined) return [];
  const earlier = rowsOfBath(log, "readings", bath)
    .map(rowFacts)
    .filter((row) => row.text("purpose") !== "rinse" && (row.number("ph") ?? 0) > 0)
    .filter((row) => (row.number("when") ?? when) < when - halfMinute);
  const last = earlier.at(-1)?.number("when");
  return last === undefined ? [] : earlier.filter((row) => Math.abs((row.number("when") ?? 0) - last) <= halfMinute);
}

const highest = (rows: readonly RowFacts<"readings">[], column: "ph" | "temperature"): number | undefined => {
  const values = rows.map((row) => row.number(column)).filter((value) => value !== undefined);
  return values.length === 0 ? undefined : Math.max(...values);
};

function sampleOf(read: number, degreesRead: number | undefined, system: UnitSystem): Sample {
  const unit = unitBySymbol(temperatureUnit[system], "temperature");
  return { ph: ph(read), temperature: degreesRead === undefined ? undefined : kelvin(toSi(degreesRead, unit)) };
}

/** A temperature that was more likely meant in the other scale: what the pH says of it counts before the usual range. */
export function temperatureDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  typed: string | undefined,
  context: LogContext,
): readonly string[] {
  const temperature = filled.number("temperature");
  const isBare = parseNumber(typed ?? "").read === "number";
  const byVerdict = isBare ? verdictDoubts(bath, filled.number("ph"), temperature, context) : [];
  return byVerdict.length > 0 ? byVerdict : scaleDoubts(temperature, typed, context.system);
}

/** A pH far from that of the reading before and from the baseline, as the log's own check has it. */
export function jumpDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  context: LogContext,
): readonly string[] {
  const { system } = context;
  const last = readingsBefore(filled, context);
  const [read, before, at] = [filled.number("ph"), highest(last, "ph"), last.at(-1)?.number("when")];
  if (read === undefined || before === undefined) return [];
  const sample = sampleOf(read, filled.number("temperature"), system);
  const [baseline, atTemperature] = [bath?.number("baseline"), bath?.number("baselineTemperature")];
  const far =
    isFarFrom(sample, sampleOf(before, highest(last, "temperature"), system)) &&
    (baseline === undefined ||
      atTemperature === undefined ||
      isFarFrom(sample, sampleOf(baseline, atTemperature, system)));
  return far
    ? [
        `pH ${phFigure(read)} is ${phFigure(Math.abs(read - before))} from the reading before, ${phFigure(before)} on ${shortMoment(at ?? 0)}. Was it typed right?`,
      ]
    : [];
}

/** A number that was more likely meant otherwise: nothing is worked out from it before that is settled. */
export function slipDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  typed: Draft,
  context: LogContext,
): readonly string[] {
  return [...temperatureDoubts(bath, filled, typed["temperature"], context), ...jumpDoubts(bath, filled, context)];
}

/** A sample far in temperature from the baseline's. */
export function gapDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  { system }: LogContext,
): readonly string[] {
  const temperature = filled.number("temperature");
  const baseline = bath?.number("baselineTemperature");
  const gap = temperature !== undefined && baseline !== undefined ? Math.abs(temperature - baseline) : 0;
  const unit = temperatureUnit[system];
  return gap >= farInTemperature[system]
    ? [
        `The sample, ${degrees(temperature ?? 0)} ${unit}, is ${degrees(gap)} ${unit} from the baseline's. Was it typed right?`,
      ]
    : [];
}

/** What is possible of a sample but unlikely: far in pH from the reading before, far in temperature from the baseline. */
export function sampleDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  typed: Draft,
  context: LogContext,
): readonly string[] {
  return [...slipDoubts(bath, filled, typed, context), ...gapDoubts(bath, filled, context)];
}
