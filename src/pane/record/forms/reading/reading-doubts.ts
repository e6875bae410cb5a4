import { unitConvert } from "../../../../../functions/units/unit-convert.ts";
import { askNumber } from "../../../../advice/ask.ts";
import { type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { degrees, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import type { UnitSystem } from "../../../../core/units/unit-system.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";

/** No bath falls or rises by so much from one reading to the next (common practice, no source). */
export const farInPh = 1;

/** 30 °C: more than a sample hot from the tank differs from one cooled to the room. */
const farInTemperature: Readonly<Record<UnitSystem, number>> = { US: 54, metric: 30, imperial: 30 };

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

/** A sample is cooled to the room, and no room where people work is colder: under this a figure in °F is likely one in °C (common practice, no source). */
const coldest = 64;

/** A number that was more likely meant otherwise: nothing is worked out from it before that is settled. */
export function slipDoubts(filled: FilledFields<ColumnId<"readings">>, context: LogContext): readonly string[] {
  const last = readingBefore(filled, context);
  const [before, at] = [last?.number("ph"), last?.number("when")];
  const [ph, temperature] = [filled.number("ph"), filled.number("temperature")];
  const jump = ph !== undefined && before !== undefined ? Math.round(Math.abs(ph - before) * 100) / 100 : 0;
  const celsius =
    temperature !== undefined && context.system === "US" && temperature < coldest
      ? askNumber(unitConvert, { value: temperature, from: "°C", to: "°F" })
      : undefined;
  return [
    ...(jump >= farInPh
      ? [
          `pH ${phFigure(ph ?? 0)} is ${phFigure(jump)} from the reading before, ${phFigure(before ?? 0)} on ${shortMoment(at ?? 0)}. Was it typed right?`,
        ]
      : []),
    ...(celsius?.known === true && temperature !== undefined
      ? [
          `${degrees(temperature)} °F is cold for a sample. If the thermometer shows °C, write ${degrees(temperature)} C, which is ${degrees(celsius.value)} °F. Is it °F?`,
        ]
      : []),
  ];
}

/** What is possible of a sample but unlikely: far in pH from the reading before, far in temperature from the baseline. */
export function sampleDoubts(
  bath: RowFacts<"baths"> | undefined,
  filled: FilledFields<ColumnId<"readings">>,
  context: LogContext,
): readonly string[] {
  const temperature = filled.number("temperature");
  const baseline = bath?.number("baselineTemperature");
  const gap = temperature !== undefined && baseline !== undefined ? Math.abs(temperature - baseline) : 0;
  const unit = temperatureUnit[context.system];
  return [
    ...slipDoubts(filled, context),
    ...(gap >= farInTemperature[context.system]
      ? [
          `The sample, ${degrees(temperature ?? 0)} ${unit}, is ${degrees(gap)} ${unit} from the baseline's. Was it typed right?`,
        ]
      : []),
  ];
}
