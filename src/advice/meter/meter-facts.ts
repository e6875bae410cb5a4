import { type RowFacts, rowFacts } from "../bath-facts.ts";
import type { LogContext } from "../log-context.ts";

/** The two buffers of a check, as the ids of their columns end. */
export const buffers = ["1", "2"] as const;

/** Checks of a meter before a moment, in the order of time. */
export function checksBefore(
  meter: string | undefined,
  when: number,
  { log }: LogContext,
): readonly RowFacts<"meterChecks">[] {
  const time = (check: RowFacts<"meterChecks">): number => check.number("when") ?? Number.POSITIVE_INFINITY;
  return log.rows.meterChecks
    .map(rowFacts)
    .filter((check) => check.text("meter") === meter && time(check) < when)
    .sort((a, b) => time(a) - time(b));
}
