import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import {
  weekBaths,
  weekCare,
  weekClaims,
  weekConcentrate,
  weekCostLines,
  weekItems,
  weekLoads,
  weekStock,
} from "./demo-week-facts.ts";

/** One row for each claim in each bath that it was in. */
export const weekShares: readonly LogRow<"shares">[] = [
  ...weekClaims.map((claim): LogRow<"shares"> => ({ bath: "B-T1-0301", claim })),
  { bath: "B-T2-0303", claim: "D-0436" },
];

/** The demo week as far as loads, items, stock and costs go; fields and tables can be replaced. */
export function weekWith(fields: LogContent["fields"] = {}, rows: LogContent["rows"] = {}): LogContent {
  return {
    fields: {
      ...firstTwoDays.fields,
      shareBasis: "baskets",
      statementClaim: "D-0436",
      ...fields,
    },
    rows: {
      ...firstTwoDays.rows,
      baths: weekBaths,
      loads: weekLoads,
      items: weekItems,
      additions: weekConcentrate,
      care: weekCare,
      costLines: weekCostLines,
      stockMoves: weekStock,
      stockBalance: [{ concentrate: "CN-1", leadDays: 4, safety: 5 }],
      itemCounts: weekClaims.map((claim): LogRow<"itemCounts"> => ({ claim })),
      shares: weekShares,
      ...rows,
    },
  };
}

/** What tests of the week start from: all of it, and without what tests of single items leave out. */
export const weekStarts: readonly LogContent[] = [
  weekWith(),
  weekWith({}, { items: [], readings: [], benchTests: [] }),
];
