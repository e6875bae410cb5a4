import { shareOut } from "../../src/core/money/share.ts";
import { moneyAmount } from "../arguments/arguments.ts";
import { weights } from "../arguments/weights-argument.ts";
import { defineFunction } from "../define-function.ts";

export const share = defineFunction({
  id: "SHARE",
  category: "Money and stock",
  summary: "Returns shares of a total that add up to it to the cent.",
  arguments: [
    moneyAmount("total", "amount to share out; rounded to the cent first", "any currency with cents"),
    weights(
      "weights",
      "one column or row of weights, such as baskets per claim; blanks and a header on top are skipped",
    ),
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "currency of the total",
    help: "one share per weight, in the shape of the weights",
  },
  examples: [
    {
      formula: "=BATH.SHARE(100,{1;1;1})",
      cells: [100, [[1], [1], [1]]],
      result: [[33.34], [33.33], [33.33]],
      source: "largest remainder: three shares that add up to 100.00, the first takes the odd cent",
    },
  ],
  notes: [
    "Does not know what a fair basis is. A blank weight gets a share of 0; refused where every weight is blank or 0.",
  ],
  source: "Whole cents by largest remainder; ties to the first.",
  compute: ([total, basis]) => basis.arrange(shareOut(total, basis.values)),
});
