import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { fieldTextOf, serialOf } from "./wording/moments.ts";

const timed = ["benchTests", "readings", "additions", "loads", "meterChecks", "care", "releases"] as const;

/** Minutes between the latest entry of a log that is ahead of the clock and its present. */
const pause = 10 / 1440;

/** A log is ahead where its latest entry is a day or more to come: one of invented days, or a wrong computer clock. */
const ahead = 1;

function latestEntry(log: LogSnapshot): number | undefined {
  const opened = log.rows.baths.map(({ cells }) => cells.opened);
  const times = timed.flatMap((table) => log.rows[table].map(({ cells }) => cells.when));
  return [...opened, ...times].reduce<number | undefined>(
    (latest, time) => (typeof time === "number" && (latest === undefined || time > latest) ? time : latest),
    undefined,
  );
}

/**
 * The present moment as a log sees it, as a date-time field writes it: the computer's clock, or just after
 * the latest entry of a log whose days are still to come, such as the invented week.
 */
export function presentOf(log: LogSnapshot, clock: string): string {
  const latest = latestEntry(log);
  const now = serialOf(clock);
  return latest !== undefined && now !== undefined && latest > now + ahead ? fieldTextOf(latest + pause) : clock;
}
