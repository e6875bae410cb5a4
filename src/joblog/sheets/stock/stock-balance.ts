import { reorderPoint } from "../../../../functions/money/reorder-point.ts";
import { stockDays } from "../../../../functions/money/stock-days.ts";
import { largest, minus, plus, times, toTheCent } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isAtMost, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { above, below, countWhere, largestWhere, sumWhere } from "../../formula/criteria.ts";
import { medianOf } from "../../formula/median.ts";
import { never } from "../../formula/times.ts";
import { columnsOf, keyInput, numberInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { between, days, priceByVolume, volume, volumeLimits } from "../../model/units-of.ts";
import { stockLevel } from "../../model/words.ts";
import { averageOr, lastAverageBefore, moved, packPriceOf, poured } from "./stock-book.ts";

const { computed, helper } = columnsOf<"stockBalance">();

const amount = { type: "number", unit: volume, format: "0.000" } as const;

export const stockBalance: TableDefinition = {
  id: "stockBalance",
  name: "StockBalance",
  caption: "Stock of each concentrate",
  emptyRows: 3,
  columns: [
    keyInput({
      id: "concentrate",
      label: "Concentrate",
      width: 13,
      required: true,
      from: ["concentrates", "concentrate"],
      help: "Every concentrate in use, once.",
    }),
    numberInput({
      id: "leadDays",
      label: "Delivery takes",
      unit: days,
      limits: between(1, 365),
      format: "0",
      width: 12,
      help: "Working days from order to shelf.",
    }),
    numberInput({
      id: "safety",
      label: "Safety stock",
      unit: volume,
      limits: volumeLimits,
      format: "0.0##",
      width: 13,
      help: "Minimum to keep on the shelf.",
    }),
    computed(
      {
        id: "lastCount",
        label: "Last count",
        type: "date and time",
        width: 16,
        help: "When it was last counted; blank if never.",
      },
      ({ concentrate, countOrder: order }, { stockMoves }) =>
        blankIf([isBlank(order)], sumWhere(stockMoves, "when", { concentrate, order })),
    ),
    computed(
      { id: "counted", label: "Counted", ...amount, width: 10, help: "What was on the shelf then." },
      ({ concentrate, countOrder }, log) =>
        blankIf([isBlank(countOrder)], moved(log, concentrate, "count", countOrder)),
    ),
    computed(
      { id: "received", label: "Received since", ...amount, width: 10, help: "Receipts after it." },
      ({ concentrate, countOrder }, log) =>
        blankIf([isBlank(countOrder)], moved(log, concentrate, "receipt", above(countOrder))),
    ),
    computed(
      { id: "used", label: "Used since", ...amount, width: 14, help: "Additions after it and other issues." },
      ({ concentrate, countOrder }, log) =>
        blankIf(
          [isBlank(countOrder)],
          plus(moved(log, concentrate, "issue", above(countOrder)), poured(log, concentrate, above(countOrder))),
        ),
    ),
    computed(
      { id: "book", label: "By the book", ...amount, width: 11, help: "Counted, and received, less used." },
      ({ counted, received, used }) => blankIf([isBlank(counted)], minus(plus(counted, received), used)),
    ),
    computed(
      {
        id: "average",
        label: "Average cost",
        type: "number",
        unit: priceByVolume,
        format: "0.00##",
        width: 10,
        help: "As the last line of the concentrate has it written down, else the pack price by pack size.",
      },
      ({ concentrate, priced, packPrice }, log) =>
        blankIf([isBlank(concentrate)], averageOr(log, concentrate, priced, packPrice)),
    ),
    computed(
      {
        id: "value",
        label: "Value",
        type: "money",
        format: "#,##0.00",
        width: 11,
        help: "Book by the average cost.",
      },
      ({ book, average }) => blankIf([isBlank(book), isBlank(average)], toTheCent(times(book, average))),
    ),
    computed(
      {
        id: "dailyUse",
        label: "Daily use",
        ...amount,
        width: 10,
        help: "Median of the days on which some went into a bath.",
      },
      ({ concentrate }, { additions }) => {
        const issueDays = countWhere(additions, { concentrate, dayIssue: above(0) });
        const median = medianOf(issueDays, (k) =>
          largestWhere(additions, "dayIssue", { concentrate, daysBelow: below(k) }),
        );
        return blankIf([isBlank(concentrate)], blankIf([equal(issueDays, 0)], median));
      },
    ),
    computed(
      {
        id: "daysLeft",
        label: "Lasts",
        type: "number",
        unit: days,
        format: "0.0",
        width: 26,
        help: "Book by the daily use: days of use, not of the calendar.",
      },
      ({ book, dailyUse }) =>
        blankIf([isBlank(book), isBlank(dailyUse)], call(stockDays, { on_hand: largest(0, book), issues: dailyUse })),
    ),
    computed(
      {
        id: "reorderAt",
        label: "Reorder at",
        ...amount,
        width: 10,
        help: "Daily use for as many days as delivery takes, and the safety stock.",
      },
      ({ dailyUse, leadDays, safety }) =>
        blankIf(
          [isBlank(dailyUse), isNoNumber(leadDays)],
          call(reorderPoint, { daily_use: dailyUse, lead_days: leadDays, safety }),
        ),
    ),
    computed(
      {
        id: "reorder",
        label: "Reorder",
        type: "text",
        words: Object.values(stockLevel),
        width: 10,
        help: "Whether the book has come down to it.",
      },
      ({ book, reorderAt }) =>
        blankIf(
          [isBlank(book), isBlank(reorderAt)],
          when(isAtMost(book, reorderAt), stockLevel.reorder).otherwise(stockLevel.enough),
        ),
    ),
    helper(
      {
        id: "countOrder",
        label: "Count",
        type: "number",
        format: "0.0000000000",
        width: 16,
        help: "Order of the last count; blank if never counted.",
      },
      ({ concentrate }, { stockMoves }) => {
        const last = largestWhere(stockMoves, "order", { concentrate, kind: "count" });
        return blankIf([isBlank(concentrate)], blankIf([equal(last, 0)], last));
      },
    ),
    helper(
      {
        id: "priced",
        label: "Priced by",
        type: "number",
        format: "0.0000000000",
        width: 16,
        help: "Order of the last line with an average written down; 0 if none.",
      },
      ({ concentrate }, log) => blankIf([isBlank(concentrate)], lastAverageBefore(log, concentrate, never)),
    ),
    helper(
      {
        id: "packPrice",
        label: "Pack price",
        type: "number",
        unit: priceByVolume,
        format: "0.00####",
        width: 10,
        help: "By pack size, from the Job sheet.",
      },
      ({ concentrate }, log) => blankIf([isBlank(concentrate)], packPriceOf(log, concentrate)),
    ),
  ],
  signals: [
    { column: "reorder", when: { is: stockLevel.reorder }, look: "act" },
    { column: "reorder", when: { is: stockLevel.enough }, look: "good" },
  ],
};
