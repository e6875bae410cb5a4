import { farInPh, mostPhByKelvin } from "../../../core/bath/reading-slip.ts";
import { roundingError } from "../../../core/numeric/rounding-error.ts";
import { coldSample } from "../../../core/units/unclear-number.ts";
import { fahrenheitDegree } from "../../../core/units/units-of-heat.ts";
import { absolute, minus, plus, rounded, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  type Condition,
  equal,
  is,
  isAtLeast,
  isBlank,
  isFilled,
  isNoNumber,
  isNot,
  isNumber,
  isUnder,
} from "../../formula/conditions.ts";
import { above, before, from, largestWhere, otherThan, upTo, type Where } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { temperature } from "../../model/units-of.ts";
import { readingCheck } from "../../model/words.ts";
import { hasNoBaseline } from "../baths/bath-baseline.ts";

const { computed, helper } = columnsOf<"readings">();

type Reading = Row<"readings">;

/** Looks like a slip, and nobody has said that it was read so: no verdict and no amount rests on it. */
export const isToBeChecked = ({ check, confirmed }: Reading): Condition =>
  all(isFilled(check), isNot(confirmed, "yes"));

const readingsOf = ({ bath }: Reading): Where<"readings"> => ({ bath, purpose: otherThan("rinse"), ph: above(0) });

/** The other sample is no farther off than bath and temperatures can make it. */
function isNear(
  { ph, temperature }: Reading,
  other: Readonly<Record<"ph" | "temperature", Expression>>,
  { named }: Log,
): Condition {
  const byDegree = when(is(named.unitSystem, "US"), mostPhByKelvin * fahrenheitDegree).otherwise(mostPhByKelvin);
  const byTemperature = when(
    all(isNumber(temperature), isNumber(other.temperature)),
    times(byDegree, absolute(minus(temperature, other.temperature))),
  ).otherwise(0);
  return isUnder(rounded(absolute(minus(ph, other.ph)), 2), plus(farInPh - roundingError, byTemperature));
}

/** Whether a reading typed into the sheet looks like a slip, as the form would ask about it. */
export const readingCheckColumn: ComputedColumn = computed(
  {
    id: "check",
    label: "Check",
    type: "text",
    words: Object.values(readingCheck),
    width: 18,
    help: "Why the reading looks like a slip. Correct it, or write “yes” under Confirmed: until then it has no verdict.",
  },
  (reading, log) => {
    const { bathRow, ph, purpose, temperature, phBefore, temperatureBefore } = reading;
    const bath = rowAt(log.baths, bathRow);
    const isCold = all(
      is(log.named.unitSystem, "US"),
      isNumber(temperature),
      isAtLeast(temperature, coldSample.low),
      isUnder(temperature, coldSample.high),
    );
    const cold = when(isCold, readingCheck.temperature).otherwise("");
    return blankIf(
      [isBlank(bathRow), isNoNumber(ph), isNoNumber(reading.when), any(is(purpose, "rinse"), is(purpose, "baseline"))],
      when(isBlank(phBefore), cold)
        .when(isNear(reading, { ph: phBefore, temperature: temperatureBefore }, log), cold)
        .when(hasNoBaseline(bath), readingCheck.ph)
        .when(isNear(reading, { ph: bath.baseline, temperature: bath.baselineTemperature }, log), cold)
        .otherwise(readingCheck.ph),
    );
  },
);

/** The reading before: what the check compares with. */
export const readingCheckHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "lastRead",
      label: "Last read before",
      type: "date and time",
      width: 16,
      help: "The bath's reading before this one; 0 if none.",
    },
    (reading, { readings }) =>
      blankIf(
        [isBlank(reading.bathRow), isNoNumber(reading.when)],
        largestWhere(readings, "when", { ...readingsOf(reading), when: before(reading.when) }),
      ),
  ),
  ...(["ph", "temperature"] as const).map((of) =>
    helper(
      {
        id: `${of}Before`,
        label: of === "ph" ? "pH the time before" : "Temperature before",
        type: "number",
        ...(of === "ph" ? {} : { unit: temperature }),
        format: of === "ph" ? "0.00" : "0.0",
        width: 8,
        help: "As read then; the highest where several were read at that minute.",
      },
      (reading, { readings }) => {
        const { lastRead } = reading;
        const highest = largestWhere(readings, of, { ...readingsOf(reading), when: [from(lastRead), upTo(lastRead)] });
        return blankIf([isBlank(lastRead)], blankIf([equal(lastRead, 0)], blankIf([equal(highest, 0)], highest)));
      },
    ),
  ),
];
