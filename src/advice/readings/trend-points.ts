import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { readingVerdict } from "../../joblog/model/words.ts";
import { findRow, rowFacts, rowsOfBath } from "../bath-facts.ts";

/** A reading on the trend; one that cannot be compared with the baseline stands apart. */
export interface TrendPoint {
  readonly when: number;
  /** At the baseline's temperature for a reading that can be compared, else as read. */
  readonly ph: number;
  readonly asRead: number;
  readonly temperature: number | undefined;
  readonly verdict: string;
  readonly comparable: boolean;
}

export interface Trend {
  readonly points: readonly TrendPoint[];
  readonly baseline: number | undefined;
  /** At the baseline's temperature, as everything that is compared. */
  readonly trigger: number | undefined;
  readonly reference: number | undefined;
}

/** The readings of a bath in the order of time, without rinses. */
export function trendOf(log: LogSnapshot, bath: string): Trend {
  const row = findRow(log, "baths", "bath", bath);
  const facts = row === undefined ? undefined : rowFacts(row);
  const reference = facts?.number("baselineTemperature");
  const gap = log.fields.temperatureGap;
  const points = rowsOfBath(log, "readings", bath).flatMap((reading): TrendPoint[] => {
    const { when, ph, purpose, temperature, verdict, phAtBaseline } = reading.cells;
    if (typeof when !== "number" || typeof ph !== "number" || purpose === "rinse") return [];
    const sample = typeof temperature === "number" ? temperature : undefined;
    const near =
      reference === undefined ||
      typeof gap !== "number" ||
      (sample !== undefined && Math.abs(sample - reference) <= gap);
    const there = near && typeof phAtBaseline === "number" ? phAtBaseline : ph;
    return [
      {
        when,
        ph: there,
        asRead: ph,
        temperature: sample,
        verdict: typeof verdict === "string" ? verdict : "",
        comparable: near && verdict !== readingVerdict.check,
      },
    ];
  });
  return { points, baseline: facts?.number("baseline"), trigger: facts?.number("trigger"), reference };
}
