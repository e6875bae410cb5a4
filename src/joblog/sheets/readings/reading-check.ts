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
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { temperature } from "../../model/units-of.ts";
import { readingCheck } from "../../model/words.ts";

const { computed, helper } = columnsOf<"readings">();

type Reading = Row<"readings">;

/** Looks like a slip, and nobody has said that it was read so: no verdict and no amount rests on it. */
export const isToBeChecked = ({ check, confirmed }: Reading): Condition =>
  all(isFilled(check), isNot(confirmed, "yes"));

const readingsOf = ({ bath }: Reading): Where<"readings"> => ({ bath, purpose: otherThan("rinse"), ph: above(0) });

type Sample = Readonly<Record<"ph" | "temperature", Expression>>;

/** The other sample is no farther off than bath and temperatures can make it. */
function isNear({ ph, temperature }: Reading, other: Sample, { named }: Log): Condition {
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
  (reading) => {
    const { bathRow, ph, purpose, phBefore, coldSample: cold } = reading;
    return blankIf(
      [isBlank(bathRow), isNoNumber(ph), isNoNumber(reading.when), any(is(purpose, "rinse"), is(purpose, "baseline"))],
      when(any(isBlank(phBefore), equal(reading.nearLast, 1), equal(reading.nearBaseline, 1)), cold).otherwise(
        readingCheck.ph,
      ),
    );
  },
);

const beforeHelp = "As read then; the highest where several were read at that minute.";

/** The reading before, all of its minute. */
const readThen = (reading: Reading): Where<"readings"> => ({
  ...readingsOf(reading),
  when: [from(reading.lastRead), upTo(reading.lastRead)],
});

function nearness(
  id: "nearLast" | "nearBaseline",
  label: string,
  otherOf: (reading: Reading) => Sample,
): ComputedColumn {
  return helper(
    {
      id,
      label,
      type: "whole number",
      format: "0",
      width: 9,
      help: "1 where it is no farther off than bath and temperatures can make it.",
    },
    (reading, log) => {
      const other = otherOf(reading);
      return blankIf([isNoNumber(reading.ph), isBlank(other.ph)], when(isNear(reading, other, log), 1).otherwise(0));
    },
  );
}

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
  helper(
    {
      id: "phBefore",
      label: "pH the time before",
      type: "number",
      format: "0.00",
      width: 8,
      help: beforeHelp,
    },
    (reading, { readings }) =>
      blankIf([isBlank(reading.lastRead), equal(reading.lastRead, 0)], largestWhere(readings, "ph", readThen(reading))),
  ),
  helper(
    {
      id: "warmestBefore",
      label: "Warmest then",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 8,
      help: "The highest temperature typed with that reading; 0 for none.",
    },
    (reading, { readings }) =>
      blankIf(
        [isBlank(reading.lastRead), equal(reading.lastRead, 0)],
        largestWhere(readings, "temperature", readThen(reading)),
      ),
  ),
  helper(
    {
      id: "temperatureBefore",
      label: "Temperature before",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 8,
      help: beforeHelp,
    },
    ({ warmestBefore }) => blankIf([isBlank(warmestBefore), equal(warmestBefore, 0)], warmestBefore),
  ),
  nearness("nearLast", "Near the one before", (reading) => ({
    ph: reading.phBefore,
    temperature: reading.temperatureBefore,
  })),
  nearness("nearBaseline", "Near the baseline", (reading) => ({
    ph: reading.bathBaseline,
    temperature: reading.bathTemperature,
  })),
  helper(
    {
      id: "coldSample",
      label: "Cold for a sample",
      type: "text",
      words: [readingCheck.temperature],
      width: 14,
      help: "Where a temperature in °F may have been read in °C.",
    },
    ({ temperature: sample }, { named }) =>
      when(
        all(
          is(named.unitSystem, "US"),
          isNumber(sample),
          isAtLeast(sample, coldSample.low),
          isUnder(sample, coldSample.high),
        ),
        readingCheck.temperature,
      ).otherwise(""),
  ),
];
