import { type RowFacts, rowFacts } from "./bath-facts.ts";
import type { LogContext } from "./log-context.ts";

/** Checks of a meter before a moment, in the order of time. */
export function checksBefore(meter: string | undefined, when: number, { log }: LogContext): readonly RowFacts[] {
  const time = (check: RowFacts): number => check.number("when") ?? Number.POSITIVE_INFINITY;
  return log.rows.meterChecks
    .map(rowFacts)
    .filter((check) => check.text("meter") === meter && time(check) < when)
    .sort((a, b) => time(a) - time(b));
}
