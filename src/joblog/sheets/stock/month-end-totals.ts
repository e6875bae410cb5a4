import { rounded } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNumber } from "../../formula/conditions.ts";
import { above, countWhere, smallestWhere, sumWhere } from "../../formula/criteria.ts";
import { apply } from "../../formula/expression.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAt } from "../../formula/lookups.ts";
import type { FieldDefinition } from "../../model/definition.ts";

function inAll(column: ColumnId<"monthEnd">, id: string, name: string, label: string, help: string): FieldDefinition {
  return {
    id,
    name,
    label,
    type: "money",
    help,
    formula: ({ monthEnd, named }) =>
      blankIf([isBlank(named.monthFrom)], rounded(sumWhere(monthEnd, column, { from: named.monthFrom }), 2)),
  };
}

/** One month over all concentrates, by value: amounts of different concentrates add up to nothing. */
export const monthEndTotals: readonly FieldDefinition[] = [
  {
    id: "monthOfTotals",
    name: "Month.Totals",
    label: "Month to sum up",
    type: "date",
    help: "Any day of a month that has lines below; blank: the last of them.",
  },
  {
    id: "monthFrom",
    name: "Month.From",
    label: "Sums of the month from",
    type: "date",
    help: "First day of the month, all concentrates together.",
    formula: ({ monthEnd, named }) => {
      const month = named.monthOfTotals;
      const last = apply("MAX", monthEnd.from);
      return when(isNumber(month), apply("DATE", apply("YEAR", month), apply("MONTH", month), 1))
        .when(equal(last, 0), "")
        .otherwise(last);
    },
  },
  inAll("openingValue", "monthOpening", "Month.Opening", "Opening value", "As the month begins."),
  inAll("receivedValue", "monthReceived", "Month.Received", "Received", "Receipts by their own prices."),
  inAll("costForClaims", "monthClaims", "Month.Claims", "Used for claims", "On the claims' account."),
  inAll("costToShop", "monthShop", "Month.Shop", "Used by the shop", "On the shop's account."),
  inAll("costForNobody", "monthNobody", "Month.Nobody", "Used, no account", "Say under Additions who pays."),
  inAll("issuedValue", "monthIssued", "Month.Issued", "Other issues", "Left the shelf other than into a bath."),
  inAll("differenceValue", "monthDifference", "Month.Difference", "Count differences", "A loss where negative."),
  inAll("closingValue", "monthClosing", "Month.Closing", "Closing value", "As the month ends."),
  {
    id: "monthUnvalued",
    name: "Month.Unvalued",
    label: "Left out, must be 0",
    type: "whole number",
    format: "0",
    help: "Concentrates of the month without a value as it begins or ends: no count, or no price.",
    formula: ({ monthEnd, named }) =>
      blankIf([isBlank(named.monthFrom)], countWhere(monthEnd, { from: named.monthFrom, unvaluedLine: above(0) })),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "monthLeftOut",
    name: "Month.LeftOut",
    label: "First one left out",
    type: "text",
    help: "Which concentrate it is, or that the month has no line.",
    formula: ({ monthEnd, named }) => {
      const its = { from: named.monthFrom, unvaluedLine: above(0) };
      return blankIf(
        [isBlank(named.monthFrom)],
        when(equal(countWhere(monthEnd, { from: named.monthFrom }), 0), "no line of the month")
          .when(equal(named.monthUnvalued, 0), "")
          .otherwise(cellAt(monthEnd.concentrate, smallestWhere(monthEnd, "unvaluedLine", its))),
      );
    },
  },
];
