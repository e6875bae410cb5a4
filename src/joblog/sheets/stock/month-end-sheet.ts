import type { SheetDefinition } from "../../model/definition.ts";
import { monthEndTable } from "./month-end-table.ts";
import { monthEndTotals } from "./month-end-totals.ts";

export const monthEndSheet: SheetDefinition = {
  id: "monthEnd",
  name: "Month end",
  title: "Month end of the stock",
  purpose: "Opening, receipts, use, count difference and closing. Type a concentrate and a day of the month.",
  caution:
    "Each line is recalculated from Stock and Additions: print it or keep a hand-off copy when the month is billed, since a later entry changes it. A later price changes nothing that was written down.",
  fields: monthEndTotals,
  tables: [monthEndTable],
  arrangement: "stacked",
  tabColor: "#8C6A4F",
  pagesWide: 2,
  orientation: "landscape",
};
