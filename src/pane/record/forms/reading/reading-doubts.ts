import { verdict } from "../../../../../functions/threshold/verdict.ts";
import { askText } from "../../../../advice/ask.ts";
import { type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { alkalinityOf, dropOf } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { degrees, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import { parseNumber } from "../../../../core/units/parse-number.ts";
import { unclearNumber } from "../../../../core/units/unclear-number.ts";
import type { UnitSystem } from "../../../../core/units/unit-system.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import type { Draft } from "../../entry-form.ts";

/** No bath falls or rises by so much from one reading to the next (common practice, no source). */
export const farInPh = 1;

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

/** The reading that this one follows; one entered late follows an earlier one than the last. */
function readingBefore(
  filled: FilledFields<ColumnId<"readings">>,
  { log }: LogContext,
): RowFacts<"readings"> | undefined {
  const [bath, when] = [filled.text("bath"), filled.number("when")];
  if (bath === undefined || when === undefined) return undefined;
  const readings = rowsOfBath(log, "readings", bath)
    .map(rowFacts)
    .filter((row) => row.text("purpose") !== "rinse" && row.number("ph") !== undefined);
  return readings.filter((row) => (row.number("when") ?? 0) <= when).at(-1);
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

/** A pH far from that of the reading before. */
export function jumpDoubts(filled: FilledFields<ColumnId<"readings">>, context: LogContext): readonly string[] {
  const last = readingBefore(filled, context);
  const [before, at] = [last?.number("ph"), last?.number("when")];
  const ph = filled.number("ph");
  const jump = ph !== undefined && before !== undefined ? Math.round(Math.abs(ph - before) * 100) / 100 : 0;
  return jump >= farInPh
    ? [
        `pH ${phFigure(ph ?? 0)} is ${phFigure(jump)} from the reading before, ${phFigure(before ?? 0)} on ${shortMoment(at ?? 0)}. Was it typed right?`,
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
  return [...temperatureDoubts(bath, filled, typed["temperature"], context), ...jumpDoubts(filled, context)];
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
