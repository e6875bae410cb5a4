import { minus, plus, rounded, times, toTheCent } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { type Condition, equal, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { atLeast, below, type Comparison, sumWhere } from "../../formula/criteria.ts";
import { apply, type Expression, type Value } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { cellAtOrBlank, positionOf } from "../../formula/lookups.ts";
import { columnsOf, dateInput, keyInput } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { priceByVolume, volume } from "../../model/units-of.ts";
import { accounts, monthEndWords } from "../../model/words.ts";
import { bookSince, lastCountBefore, moved, poured } from "./stock-book.ts";

const { computed, helper } = columnsOf<"monthEnd">();

type MonthEnd = Row<"monthEnd">;

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;
const money = { type: "money", format: "#,##0.00", width: 11 } as const;

const incomplete = ({ from, concentrate }: MonthEnd): readonly [Condition, Condition] => [
  isBlank(from),
  isBlank(concentrate),
];

function line(column: Parameters<typeof computed>[0], formula: (row: MonthEnd, log: Log) => Value): ComputedColumn {
  return computed(column, (row, log) => blankIf(incomplete(row), formula(row, log)));
}

/** The days of the month. */
const inMonth = ({ from, until }: MonthEnd): readonly Comparison[] => [atLeast(from), below(until)];

const bookBefore = (day: Expression, count: Expression, { concentrate }: MonthEnd, log: Log): Expression =>
  when(equal(count, 0), monthEndWords.notCounted).otherwise(bookSince(log, concentrate, count, below(day)));

const [toClaims, toShop] = accounts;

type Account = (typeof accounts)[number];

/** What the month's additions of the concentrate on that account come to. */
function onAccount(account: Account, what: "amount" | "cost"): (row: MonthEnd, log: Log) => Expression {
  return (row, { additions }) =>
    sumWhere(additions, what, { concentrate: row.concentrate, account, day: inMonth(row) });
}

/** What the books need of a month: where the stock went, on whose account, and what the count says against it. */
export const monthEndTable: TableDefinition = {
  id: "monthEnd",
  name: "MonthEnd",
  caption: "Month ends",
  emptyRows: 1,
  columns: [
    keyInput({
      id: "concentrate",
      label: "Concentrate",
      width: 13,
      required: true,
      from: ["concentrates", "concentrate"],
      help: "One line for each concentrate and month.",
    }),
    dateInput({ id: "month", label: "Month", width: 12, required: true, help: "Any day of the month." }),
    line(
      {
        id: "opening",
        label: "Opening",
        ...amount,
        help: "By the book as the month begins, from the last count before it.",
      },
      (row, log) => bookBefore(row.from, row.openingCount, row, log),
    ),
    line({ id: "received", label: "Received", ...amount, help: "Receipts of the month." }, (row, log) =>
      moved(log, row.concentrate, "receipt", inMonth(row)),
    ),
    line(
      { id: "usedForClaims", label: "Used for claims", ...amount, help: "Into baths, on the claims' account." },
      onAccount(toClaims, "amount"),
    ),
    line(
      { id: "usedByShop", label: "Used by the shop", ...amount, help: "Into baths, on the shop's account." },
      onAccount(toShop, "amount"),
    ),
    line(
      {
        id: "usedForNobody",
        label: "Used, no account",
        ...amount,
        help: "Into baths, with no account given: say under Additions who pays.",
      },
      (row, log) => rounded(minus(poured(log, row.concentrate, inMonth(row)), row.usedForClaims, row.usedByShop), 6),
    ),
    line(
      { id: "issued", label: "Other issues", ...amount, help: "Left the shelf other than into a bath." },
      (row, log) => moved(log, row.concentrate, "issue", inMonth(row)),
    ),
    line(
      {
        id: "difference",
        label: "Count difference",
        ...amount,
        help: "What the month's counts found more, or less where it is negative, than the book.",
      },
      ({ opening, closing, received, usedForClaims, usedByShop, usedForNobody, issued }) =>
        blankIf(
          [isNoNumber(opening), isNoNumber(closing)],
          rounded(plus(minus(closing, opening, received), usedForClaims, usedByShop, usedForNobody, issued), 6),
        ),
    ),
    line(
      { id: "closing", label: "Closing", ...amount, help: "By the book as the month ends, from its last count." },
      (row, log) => bookBefore(row.until, row.closingCount, row, log),
    ),
    line(
      {
        id: "costForClaims",
        label: "Cost to claims",
        ...money,
        width: 12,
        help: "What Additions priced on the claims' account.",
      },
      onAccount(toClaims, "cost"),
    ),
    line(
      { id: "costToShop", label: "Cost to the shop", ...money, help: "What Additions priced on the shop's account." },
      onAccount(toShop, "cost"),
    ),
    line(
      {
        id: "closingValue",
        label: "Closing value",
        ...money,
        help: "Closing at the price on the Job sheet, the one that Additions are priced by.",
      },
      ({ closing, price }) => blankIf([isNoNumber(closing), isBlank(price)], toTheCent(times(closing, price))),
    ),
    helper(
      {
        id: "from",
        label: "From",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Number of the month's first day.",
      },
      ({ month }) => blankIf([isNoNumber(month)], apply("DATE", apply("YEAR", month), apply("MONTH", month), 1)),
    ),
    helper(
      {
        id: "until",
        label: "Until",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Number of the next month's first day.",
      },
      ({ from, month }) =>
        blankIf([isBlank(from)], apply("DATE", apply("YEAR", month), plus(apply("MONTH", month), 1), 1)),
    ),
    helper(
      {
        id: "openingCount",
        label: "Count before",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Day of the last count before the month; 0 if none.",
      },
      (row, log) => blankIf(incomplete(row), lastCountBefore(log, row.concentrate, row.from)),
    ),
    helper(
      {
        id: "closingCount",
        label: "Last count",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Day of the last count to the month's end; 0 if none.",
      },
      (row, log) => blankIf(incomplete(row), lastCountBefore(log, row.concentrate, row.until)),
    ),
    helper(
      {
        id: "price",
        label: "Price used",
        type: "number",
        unit: priceByVolume,
        format: "0.00##",
        width: 9,
        help: "Of the concentrate, by unit of volume.",
      },
      (row, { concentrates }) =>
        blankIf(
          incomplete(row),
          cellAtOrBlank(concentrates.unitPrice, positionOf(row.concentrate, concentrates.concentrate)),
        ),
    ),
  ],
  signals: [
    { column: "difference", when: { isNot: 0 }, look: "watch" },
    { column: "usedForNobody", when: { isNot: 0 }, look: "watch" },
    { column: "opening", when: { is: monthEndWords.notCounted }, look: "watch" },
    { column: "closing", when: { is: monthEndWords.notCounted }, look: "watch" },
  ],
};
