import type { TimedReading } from "../../src/core/bath/ph-trend.ts";
import { ph } from "../../src/core/units/quantity.ts";
import { alignedList, numberOf } from "../arguments/list-arguments.ts";
import { refuse } from "../arguments/read-cell.ts";
import { checkOneClock, timeList } from "../arguments/time-argument.ts";
import type { Argument } from "../define-function.ts";

type Column = readonly (number | undefined)[];

export const times = timeList(
  "times",
  "when each was read, since the last addition; rows with a blank are skipped, and a time of 0 is a blank",
);

export const timedPh: Argument<Column, "readings"> = alignedList("readings", {
  help: "pH at one temperature, in the same order",
  unit: "pH",
  read: numberOf("readings"),
});

/** The rows that have both a time and a reading. */
export function timedReadings(at: Column, readings: Column): readonly TimedReading[] {
  if (at.length !== readings.length)
    refuse(times.name, `and readings have ${at.length} and ${readings.length} cells; they must have the same number.`);
  checkOneClock(times.name, at);
  return at.flatMap((time, row) => {
    const reading = readings[row];
    return time === undefined || reading === undefined ? [] : [{ time, reading: ph(reading) }];
  });
}

/** What both functions of a trend leave to the reader. */
export const trendNotes: readonly string[] = [
  "Start new ranges after every addition, water make-up and adjustment of the meter: across one of them a trend means nothing.",
  "Readings at one temperature only, with the meter's drift taken out (DRIFTFIX): a drifting meter falls as a bath does.",
  "At most 1000 readings. Times in hours: count from 1, since 0 is a blank.",
];
