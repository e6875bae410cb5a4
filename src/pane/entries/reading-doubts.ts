import type { UnitSystem } from "../../core/units/unit-system.ts";
import { lastReadingOf, rowFacts, type RowFacts } from "../../joblog/bath-facts.ts";
import { temperature as temperatureUnit } from "../../joblog/units-of.ts";
import { degrees, ph as phFigure } from "../fields/figures.ts";
import { shortMoment } from "../fields/moments.ts";
import type { EntryContext } from "./entry-form.ts";

/** No bath falls or rises by so much from one reading to the next (common practice, no source). */
const farInPh = 1;

/** 30 °C: more than a sample hot from the tank differs from one cooled to the room. */
const farInTemperature: Readonly<Record<UnitSystem, number>> = { US: 54, metric: 30, imperial: 30 };

/** What is possible of a sample but unlikely: far in pH from the reading before, far in temperature from the baseline. */
export function sampleDoubts(bath: RowFacts | undefined, name: string | undefined, sample: { readonly ph: number | undefined; readonly temperature: number | undefined }, context: EntryContext): readonly string[] {
  const row = name === undefined ? undefined : lastReadingOf(context.log, name);
  const last = row === undefined ? undefined : rowFacts(row);
  const [before, at] = [last?.number("ph"), last?.number("when")];
  const { ph, temperature } = sample;
  const jump = ph !== undefined && before !== undefined ? Math.round(Math.abs(ph - before) * 100) / 100 : 0;
  const baseline = bath?.number("baselineTemperature");
  const gap = temperature !== undefined && baseline !== undefined ? Math.abs(temperature - baseline) : 0;
  const unit = temperatureUnit[context.system];
  return [
    ...(jump >= farInPh ? [`pH ${phFigure(ph ?? 0)} is ${phFigure(jump)} from the reading before, ${phFigure(before ?? 0)} on ${shortMoment(at ?? 0)}. Was it typed right?`] : []),
    ...(gap >= farInTemperature[context.system] ? [`The sample, ${degrees(temperature ?? 0)} ${unit}, is ${degrees(gap)} ${unit} from the baseline's. Was it typed right?`] : []),
  ];
}
