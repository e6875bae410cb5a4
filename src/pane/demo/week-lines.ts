/** Invented data, as all of the demo week: lines of stock and cost, which a person types on the sheets themselves. */
import type { NewRow } from "../../excel/append-ground.ts";
import type { LogRow } from "../../joblog/definition.ts";
import { serialOf } from "../fields/moments.ts";
import { bathOne, march } from "./week-event.ts";

/** A line typed on its sheet, and when. */
export interface WeekLine {
  readonly at: string;
  readonly row: NewRow;
}

const concentrate = "CN-1";

const stock: readonly (readonly [at: string, row: LogRow])[] = [
  [march(1, "06:30"), { id: "S001", when: serialOf("2027-02-28"), kind: "count", amount: 22.5, note: "opening stock" }],
  [march(4, "12:00"), { id: "S002", when: serialOf("2027-03-04"), kind: "receipt", amount: 10, price: 28.4, document: "PO 3318", note: "2 pails" }],
  [march(6, "12:00"), { id: "S003", when: serialOf("2027-03-06"), kind: "count", amount: 22.308, note: "0.20 gal short: a spill that was not logged" }],
];

/** Concentrate is not among them: it comes from the additions, at the pack's price. */
const costs: readonly (readonly [at: string, what: string, document: string, amount: number, account: "claims" | "shop"])[] = [
  [march(5, "17:10"), "Filter bags, 2, curd", "store slip 0305", 11.8, "shop"],
  [march(5, "17:10"), "Labor, 1.5 h, curd clean-up", "time sheet KT", 69, "shop"],
  [march(6, "12:10"), "RO water", "water meter, week 9", 3.9, "claims"],
  [march(6, "12:10"), "Electricity", "power meter, week 9", 8.42, "claims"],
  [march(6, "12:10"), "Bath care labor, 5.5 h", "time sheets KT, MV", 253, "claims"],
  [march(6, "12:10"), "Filter bags, 2", "store slip 0304", 11.8, "claims"],
  [march(6, "12:10"), "Neutralizing acid", "store slip 0306", 1.32, "claims"],
  [march(9, "14:00"), "Sludge drum share and TCLP", "laboratory invoice", 96, "claims"],
];

export const weekLines: readonly WeekLine[] = [
  ...stock.map(([at, row]): WeekLine => ({ at, row: { table: "stockMoves", row: { ...row, concentrate, initials: "KT" } } })),
  ...costs.map(([at, what, document, amount, account], index): WeekLine => ({
    at,
    row: { table: "costLines", row: { id: `C${String(index + 1).padStart(3, "0")}`, bath: bathOne, date: serialOf(at.slice(0, 10)), what, document, amount, account } },
  })),
];
