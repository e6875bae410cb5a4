import type { LogRow } from "../../joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { serialOf } from "../wording/moments.ts";
import { closedMonths, monthOf } from "./closed-months.ts";
import type { Poster } from "./posting.ts";

const firstDay = (month: string): number | undefined => serialOf(`${month}-01`);

/** The line that closes a month, or why it cannot be closed. */
export function closingOf(
  log: LogSnapshot,
  month: string,
  { initials, now }: Poster,
): { readonly row: LogRow<"closedMonths"> } | { readonly refused: string } {
  const first = firstDay(month);
  if (first === undefined) return { refused: `Month: "${month}" is no month. Write it as 2027-03.` };
  if (month > now.slice(0, 7)) return { refused: `${month} is still to come.` };
  if (closedMonths(log).has(month)) return { refused: `${month} is closed already.` };
  return { row: { month: first, closedAt: serialOf(now), closedBy: initials } };
}

/** The line by which a month stands closed. */
export function closingLine(log: LogSnapshot, month: string): SnapshotRow<"closedMonths"> | undefined {
  return log.rows.closedMonths.findLast(
    ({ cells }) => typeof cells.month === "number" && monthOf(cells.month) === month && cells.reopenedAt === undefined,
  );
}
