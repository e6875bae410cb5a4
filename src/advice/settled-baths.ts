/** Baths in whose rows values took the place of formulas. */
import type { RowValue } from "../joblog/model/definition.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { folded } from "../joblog/model/same-text.ts";

type Rows = Pick<LogSnapshot["rows"], "baths">;

/** Tells of what a row's bath cell holds whether that bath is settled. */
export function isSettledIn({ baths }: Rows): (bath: RowValue | undefined) => boolean {
  const settled = new Set(
    baths.flatMap(({ cells: { bath, settledAt, settledBy } }) =>
      bath === undefined || (settledAt === undefined && settledBy === undefined) ? [] : [folded(String(bath))],
    ),
  );
  return (bath) => bath !== undefined && settled.has(folded(String(bath)));
}

/** Where a bath's formulas are put back. */
export const settlingPlace = "More, Shop, Closed baths";
