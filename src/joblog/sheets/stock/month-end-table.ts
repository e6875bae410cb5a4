import { minus, plus, rounded } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { below } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { dateInput, keyInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { monthEndWords } from "../../model/words.ts";
import {
  computed,
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
import { monthEndValueHelpers, monthEndValues } from "./month-end-values.ts";
import { countedAt, lastCountBefore, moved, netSince, pouredSince } from "./stock-book.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

function book(count: Expression, counted: Expression, since: Expression, poured: Expression): Expression {
  return when(equal(count, 0), monthEndWords.notCounted).otherwise(minus(plus(counted, since), poured));
}

const amountParts = (row: MonthEnd): Parts => ({
  opening: row.opening,
  received: row.received,
  out: [row.usedInAll],
  difference: row.difference,
  closing: row.closing,
});

/** What the books need of a month: where the stock went, on whose account, what the count says against it, and what it is worth. */
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
      ({ openingCount, openingCounted, openingSince, openingPoured }) =>
        book(openingCount, openingCounted, openingSince, openingPoured),
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
      (row, log) => rounded(minus(ofAdditions("amount", row, log), row.usedForClaims, row.usedByShop), 6),
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
      (row, log) => blankIf([isNoNumber(row.opening)], rounded(ofStock("variance", row, log), 6)),
    ),
    line(
      { id: "closing", label: "Closing", ...amount, help: "By the book as the month ends, from its last count." },
      ({ closingCount, closingCounted, closingSince, closingPoured }) =>
        book(closingCount, closingCounted, closingSince, closingPoured),
    ),
    computed(
      {
        id: "amountCheck",
        label: "Amount left over",
        ...amount,
        help: "0 where it comes out even. Anything else is a row in Stock that does not count.",
      },
      (row) => leftOver(amountParts(row), (left) => rounded(left, 6)),
    ),
    ...monthEndValues,
    helperLine(
      { id: "usedInAll", label: "Used in all", ...amount, help: "On whoever's account, and other issues." },
      ({ usedForClaims, usedByShop, usedForNobody, issued }) => plus(usedForClaims, usedByShop, usedForNobody, issued),
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
    helperLine(
      {
        id: "openingCount",
        label: "Count before",
        type: "number",
        format: "0.0000000000",
        width: 16,
        help: "Order of the last count before the month; 0 if none.",
      },
      (row, log) => lastCountBefore(log, row.concentrate, row.from),
    ),
    helperLine(
      {
        id: "closingCount",
        label: "Last count",
        type: "number",
        format: "0.0000000000",
        width: 16,
        help: "Order of the last count to the month's end; 0 if none.",
      },
      (row, log) => lastCountBefore(log, row.concentrate, row.until),
    ),
    helperLine(
      { id: "openingCounted", label: "Counted before", ...amount, help: "What that count found." },
      (row, log) => countedAt(log, row.concentrate, row.openingCount),
    ),
    helperLine(
      {
        id: "openingSince",
        label: "To the opening",
        ...amount,
        help: "Receipts less issues since then.",
      },
      (row, log) => netSince(log, row.concentrate, row.openingCount, below(row.from)),
    ),
    helperLine(
      { id: "openingPoured", label: "Into baths to the opening", ...amount, help: "Additions since that count." },
      (row, log) => pouredSince(log, row.concentrate, row.openingCount, below(row.from)),
    ),
    helperLine(
      { id: "closingCounted", label: "Counted last", ...amount, help: "What the last count found." },
      (row, log) => countedAt(log, row.concentrate, row.closingCount),
    ),
    helperLine(
      {
        id: "closingSince",
        label: "To the closing",
        ...amount,
        help: "Receipts less issues since then.",
      },
      (row, log) => netSince(log, row.concentrate, row.closingCount, below(row.until)),
    ),
    helperLine(
      { id: "closingPoured", label: "Into baths to the closing", ...amount, help: "Additions since that count." },
      (row, log) => pouredSince(log, row.concentrate, row.closingCount, below(row.until)),
    ),
    ...monthEndValueHelpers,
  ],
  signals: [
    { column: "difference", when: { isNot: 0 }, look: "watch" },
    { column: "usedForNobody", when: { isNot: 0 }, look: "watch" },
    { column: "opening", when: { is: monthEndWords.notCounted }, look: "watch" },
    { column: "closing", when: { is: monthEndWords.notCounted }, look: "watch" },
    { column: "amountCheck", when: { isNot: 0 }, look: "act" },
    { column: "valueCheck", when: { isNot: 0 }, look: "act" },
  ],
};
