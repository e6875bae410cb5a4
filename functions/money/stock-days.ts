import { stockDays as daysOf } from "../../src/core/money/stock.ts";
import { list, numberOf } from "../arguments/list-arguments.ts";
import { numberOrNone } from "../arguments/number-or-none.ts";
import { defineFunction } from "../define-function.ts";

export const stockDays = defineFunction({
  id: "STOCKDAYS",
  category: "Money and stock",
  summary: "Days that a stock lasts at the median daily issue.",
  arguments: [
    numberOrNone("on_hand", "stock now; 0 or blank: none", "any unit"),
    list("issues", {
      help: "column or row of daily issues, each above 0; days without an issue, blanks and a header on top are skipped",
      unit: "same unit",
      read: numberOf("issues"),
    }),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "days with an issue",
    help: "days left; 0 without stock",
  },
  examples: [
    {
      formula: "=BATH.STOCKDAYS(22.3,{4.2;0;1.7;3.2;0.9})",
      cells: [22.3, [[4.2], [0], [1.7], [3.2], [0.9]]],
      result: 9.102,
      tolerance: 0.001,
      source: "by hand: the median of 0.9, 1.7, 3.2 and 4.2 is 2.45, and 22.3/2.45 = 9.102",
    },
  ],
  notes: [
    "A blank cell and a 0 are alike to Excel, so days without an issue do not count: the answer is in days on which something is issued, fewer than calendar days.",
    "Add up the issues of one day first. Count a pail by what is in it. A blank stock counts as 0, so that it calls for an order rather than hides one.",
    "The median leaves out a rare large opening dose: see that the stock covers the next one too.",
  ],
  source: "On hand / median of the daily issues.",
  compute: ([onHand, issues]) => daysOf(onHand, issues),
});
