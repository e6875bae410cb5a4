import { reorderPoint as pointOf } from "../../src/core/money/stock.ts";
import { positiveNumber } from "../arguments/arguments.ts";
import { numberOrNone } from "../arguments/number-or-none.ts";
import { defineFunction } from "../define-function.ts";

export const reorderPoint = defineFunction({
  id: "REORDERPOINT",
  category: "Money and stock",
  summary: "Stock at which to order: what is used until the delivery comes, and a safety stock.",
  arguments: [
    positiveNumber("daily_use", "what one working day uses", "any unit per day"),
    positiveNumber("lead_days", "working days from order to delivery, if daily_use is of working days", "days"),
    numberOrNone("safety", "stock that should still be there when the delivery comes; 0 or blank: none", "same unit"),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "unit of the daily use",
    help: "order when the stock is down to this",
  },
  examples: [
    {
      formula: "=BATH.REORDERPOINT(2.1,5,6)",
      cells: [2.1, 5, 6],
      result: 16.5,
      tolerance: 1e-9,
      source: "2.1 gallons a day for 5 days, and 6 in reserve",
    },
  ],
  notes: [
    "Daily use and lead days must mean the same days: both working days or both calendar days.",
    "Does not know what is already on order, opened pails, shelf life, or a loss that takes more than usual.",
  ],
  source: "Daily use × lead days + safety.",
  compute: ([dailyUse, leadDays, safety]) => pointOf(dailyUse, leadDays, safety),
});
