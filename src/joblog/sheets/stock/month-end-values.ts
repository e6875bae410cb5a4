import { absolute, minus, plus, times, toTheCent } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, isAtMost, isBlank, isNoNumber, isNumber } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { lineOf } from "../../formula/lookups.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { priceByVolume } from "../../model/units-of.ts";
import {
  helper,
  helperLine,
  inMonth,
  leftOver,
  line,
  type MonthEnd,
  ofAdditions,
  ofStock,
  onAccount,
  type Parts,
  toClaims,
  toShop,
} from "./month-end-line.ts";
import { averageOr, lastAverageBefore, packPriceOf } from "./stock-book.ts";

const money = { type: "money", format: "#,##0.00", width: 11 } as const;

function valued(amount: Expression, average: Expression): Expression {
  return blankIf([isNoNumber(amount), isBlank(average)], toTheCent(times(amount, average)));
}

const valueParts = (row: MonthEnd): Parts => ({
  opening: row.openingValue,
  received: row.receivedValue,
  out: [row.costForClaims, row.costToShop, row.costForNobody, row.issuedValue],
  difference: row.differenceValue,
  closing: row.closingValue,
});

/** The month in money, by the average cost that was written down at the time. */
export const monthEndValues: readonly ComputedColumn[] = [
  line(
    { id: "openingValue", label: "Opening value", ...money, help: "Opening by the average cost as the month begins." },
    ({ opening, openingAverage }) => valued(opening, openingAverage),
  ),
  line({ id: "receivedValue", label: "Received value", ...money, help: "Receipts by their own prices." }, (row, log) =>
    ofStock("value", row, log, { kind: "receipt" }),
  ),
  line(
    { id: "costForClaims", label: "Cost to claims", ...money, help: "Of what was used on the claims' account." },
    onAccount(toClaims, "cost"),
  ),
  line(
    { id: "costToShop", label: "Cost to the shop", ...money, help: "Of what was used on the shop's account." },
    onAccount(toShop, "cost"),
  ),
  line(
    { id: "costForNobody", label: "Cost, no account", ...money, help: "Of what was used with no account given." },
    (row, log) => toTheCent(minus(ofAdditions("cost", row, log), row.costForClaims, row.costToShop)),
  ),
  line({ id: "issuedValue", label: "Other issues value", ...money, help: "By the average cost then." }, (row, log) =>
    ofStock("value", row, log, { kind: "issue" }),
  ),
  line(
    {
      id: "differenceValue",
      label: "Count difference value",
      ...money,
      help: "By the average cost then. It is the shop's own: a loss where negative.",
    },
    (row, log) => blankIf([isNoNumber(row.difference)], ofStock("value", row, log, { kind: "count" })),
  ),
  line(
    { id: "closingValue", label: "Closing value", ...money, help: "Closing by the average cost as the month ends." },
    ({ closing, closingAverage }) => valued(closing, closingAverage),
  ),
  line(
    {
      id: "rounding",
      label: "Rounding",
      ...money,
      width: 10,
      help: "Cents that rounding each line leaves: half a cent a line at most. The shop's own.",
    },
    ({ valueLeft, roundedLines }) =>
      blankIf(
        [isNoNumber(valueLeft)],
        when(isAtMost(absolute(valueLeft), plus(times(roundedLines, 0.005), 0.000_1)), valueLeft).otherwise(0),
      ),
  ),
  line(
    {
      id: "valueCheck",
      label: "Value left over",
      ...money,
      help:
        "0.00 where it comes out even. Anything else went in or out at another cost than the average: a receipt without " +
        "a price or average, or entered after what it prices.",
    },
    ({ valueLeft, rounding }) => blankIf([isNoNumber(valueLeft)], toTheCent(minus(valueLeft, rounding))),
  ),
];

const order = { type: "number", format: "0.0000000000", width: 16 } as const;
const average = { type: "number", unit: priceByVolume, format: "0.00####", width: 9 } as const;

export const monthEndValueHelpers: readonly ComputedColumn[] = [
  helperLine(
    {
      id: "openingPriced",
      label: "Priced before",
      ...order,
      help: "Order of the last line before the month with an average written down; 0 if none.",
    },
    (row, log) => lastAverageBefore(log, row.concentrate, row.from),
  ),
  helperLine(
    {
      id: "closingPriced",
      label: "Last priced",
      ...order,
      help: "Order of the last line to the month's end with an average written down; 0 if none.",
    },
    (row, log) => lastAverageBefore(log, row.concentrate, row.until),
  ),
  helperLine(
    { id: "packPrice", label: "Pack price", ...average, help: "By pack size, from the Job sheet." },
    (row, log) => packPriceOf(log, row.concentrate),
  ),
  helperLine(
    { id: "openingAverage", label: "Average before", ...average, help: "As written down then, else the pack's price." },
    (row, log) => averageOr(log, row.concentrate, row.openingPriced, row.packPrice),
  ),
  helperLine(
    {
      id: "closingAverage",
      label: "Average at the end",
      ...average,
      help: "As written down then, else the pack's price.",
    },
    (row, log) => averageOr(log, row.concentrate, row.closingPriced, row.packPrice),
  ),
  helperLine(
    {
      id: "roundedLines",
      label: "Rounded lines",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Lines of Stock and Additions in the month, and opening, closing and average.",
    },
    (row, { stockMoves, additions }) =>
      plus(
        countWhere(stockMoves, { concentrate: row.concentrate, order: inMonth(row) }),
        countWhere(additions, { concentrate: row.concentrate, day: inMonth(row) }),
        3,
      ),
  ),
  helperLine(
    {
      id: "unvaluedLine",
      label: "Without a value",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Position of a line that has no value as the month begins or ends; blank on all others.",
    },
    ({ openingValue, closingValue, concentrate }, { monthEnd }) =>
      when(all(isNumber(openingValue), isNumber(closingValue)), "").otherwise(
        lineOf(concentrate, monthEnd.concentrate),
      ),
  ),
  helper({ id: "valueLeft", label: "Left", ...money, help: "Before what rounding explains." }, (row) =>
    leftOver(valueParts(row), toTheCent),
  ),
];
