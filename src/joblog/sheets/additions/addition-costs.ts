import { joined, times, toTheCent } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, is, isBlank, isNoNumber, isNot } from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import { cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { gapLine } from "../costs/gap-line.ts";

const { computed, helper } = columnsOf<"additions">();

export const additionCost: ComputedColumn = computed(
  {
    id: "cost",
    label: "Cost",
    type: "money",
    format: "#,##0.00",
    width: 10,
    help: "Amount by price, to the cent; blank where no price is known.",
  },
  ({ bathRow, amount, price }) =>
    blankIf([isBlank(bathRow), isNoNumber(amount), isNoNumber(price)], toTheCent(times(amount, price))),
);

/** The price behind the cost, and why nobody is charged with it. */
export const additionCostHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "price",
      label: "Price used",
      type: "number",
      format: "0.000#",
      width: 9,
      help: "Of the concentrate or the water, by unit of volume.",
    },
    ({ bathRow, kind, waterRow }, { baths, concentrates, waters }) =>
      blankIf(
        [isBlank(bathRow)],
        when(is(kind, "concentrate"), cellAtOrBlank(concentrates.unitPrice, rowAt(baths, bathRow).concentrateRow))
          .when(is(kind, "water"), cellAtOrBlank(waters.price, waterRow))
          .otherwise(""),
      ),
  ),
  helper(
    {
      id: "gap",
      label: "Not placed",
      type: "text",
      width: 26,
      help: "Addition and why nobody is charged with it; water without a price costs nothing.",
    },
    ({ id, bath, kind, bathRow, amount, price, account }): Expression => {
      const because = (why: string): Expression => joined(id, `: ${why}`);
      return blankIf(
        [all(isBlank(id), isBlank(bath), isBlank(amount))],
        when(isBlank(bathRow), because("bath missing"))
          .when(isNoNumber(amount), because("amount is no number"))
          .when(all(isNoNumber(price), isNot(kind, "water")), because("no price"))
          .when(isNoNumber(price), "")
          .when(isBlank(account), because("account missing"))
          .otherwise(""),
      );
    },
  ),
  gapLine<"additions">(({ gap }, { additions }) => [gap, additions.gap]),
];
