import type { RowValue } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { fieldTextOf } from "../wording/moments.ts";

export const monthOf = (serial: number): string => fieldTextOf(serial).slice(0, 7);

/** Months that are closed now: the last line of each month tells. */
export function closedMonths({ rows }: LogSnapshot): ReadonlySet<string> {
  const state = new Map<string, RowValue | undefined>();
  for (const { cells } of rows.closedMonths)
    if (typeof cells.month === "number" && cells.closedAt !== undefined)
      state.set(monthOf(cells.month), cells.reopenedAt);
  return new Set([...state].filter(([, reopened]) => reopened === undefined).map(([month]) => month));
}

/** Why nothing can be dated on that day, or undefined where it can. */
export function closedOn(log: LogSnapshot, serial: number): string | undefined {
  const month = monthOf(serial);
  return closedMonths(log).has(month)
    ? `${month} is closed for the books. Date it in an open month, or reopen ${month} under Claims and say why.`
    : undefined;
}
