/** Invented data, as all of the demo week: what it cost beside concentrate, which comes from the additions at the pack's price. */
import type { costKinds } from "../../joblog/model/words.ts";
import { bathOne, march, typed, type WeekEvent } from "./week-event.ts";

type Cost = readonly [
  at: string,
  what: string,
  document: string,
  amount: number,
  account: "claims" | "shop",
  kind: (typeof costKinds)[number],
];

const costs: readonly Cost[] = [
  [march(5, "17:10"), "Filter bags, 2, curd", "store slip 0305", 11.8, "shop", "supplies"],
  [march(5, "17:10"), "Labor, 1.5 h, curd clean-up", "time sheet 0305", 69, "shop", "labor"],
  [march(6, "12:10"), "RO water", "RO meter 0306", 3.9, "claims", "water"],
  [march(6, "12:10"), "Electricity", "meter 0306", 8.42, "claims", "energy"],
  [march(6, "12:10"), "Bath care labor, 5.5 h", "time sheet 0306", 253, "claims", "labor"],
  [march(6, "12:10"), "Filter bags, 2", "store slip 0304", 11.8, "claims", "supplies"],
  [march(6, "12:10"), "Neutralizing acid", "store slip 0306", 1.32, "claims", "supplies"],
  [march(9, "14:00"), "Sludge drum share, lab for sludge and water", "lab invoice", 96, "claims", "disposal"],
];

export const costEvents: readonly WeekEvent[] = costs.map(([at, what, document, amount, account, kind]) => ({
  at,
  entry: "cost line",
  bath: bathOne,
  draft: typed({ what, document, amount, account, kind }),
}));
