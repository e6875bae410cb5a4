import { reorderPoint } from "../../../../functions/money/reorder-point.ts";
import { stockDays } from "../../../../functions/money/stock-days.ts";
import { largest, minus, plus } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isAtMost, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { above, below, countWhere, largestWhere } from "../../formula/criteria.ts";
import { medianOf, middleRanks } from "../../formula/median.ts";
import { columnsOf, keyInput, numberInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { between, days, volume, volumeLimits } from "../../model/units-of.ts";
import { stockLevel } from "../../model/words.ts";
import { moved, poured } from "./stock-book.ts";

const { computed } = columnsOf<"stockBalance">();

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
      ({ concentrate }, { stockMoves }) => {
        const last = largestWhere(stockMoves, "order", { concentrate, kind: "count" });
        return blankIf([isBlank(concentrate)], blankIf([equal(last, 0)], last));
      },
    ),
    computed(
      { id: "counted", label: "Counted", ...amount, width: 10, help: "What was on the shelf then." },
      ({ concentrate, lastCount }, log) => blankIf([isBlank(lastCount)], moved(log, concentrate, "count", lastCount)),
    ),
    computed(
      { id: "received", label: "Received since", ...amount, width: 10, help: "Receipts after it." },
      ({ concentrate, lastCount }, log) =>
        blankIf([isBlank(lastCount)], moved(log, concentrate, "receipt", above(lastCount))),
    ),
    computed(
      { id: "used", label: "Used since", ...amount, width: 14, help: "Additions after it and other issues." },
      ({ concentrate, lastCount }, log) =>
        blankIf(
          [isBlank(lastCount)],
          plus(moved(log, concentrate, "issue", above(lastCount)), poured(log, concentrate, above(lastCount))),
        ),
    ),
    computed(
      {
        id: "book",
        label: "By the book",
        ...amount,
        width: 11,
        help: "Last count plus receipts, minus what was used.",
      },
      ({ counted, received, used }) => blankIf([isBlank(counted)], minus(plus(counted, received), used)),
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
        const median = medianOf(middleRanks(issueDays), (k) =>
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
        help: "What is on the shelf by the book, divided by the daily use: working days, not calendar days.",
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
        help: "Daily use times the days that delivery takes, plus the safety stock.",
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
        help: "Whether the stock by the book is down to the reorder point.",
      },
      ({ book, reorderAt }) =>
        blankIf(
          [isBlank(book), isBlank(reorderAt)],
          when(isAtMost(book, reorderAt), stockLevel.reorder).otherwise(stockLevel.enough),
        ),
    ),
  ],
  signals: [
    { column: "reorder", when: { is: stockLevel.reorder }, look: "act" },
    { column: "reorder", when: { is: stockLevel.enough }, look: "good" },
  ],
};
