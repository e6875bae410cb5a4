import { dividedBy, minus, negative, plus, rounded, times, toTheCent, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, is, isBlank, isNoNumber, isNot } from "../../formula/conditions.ts";
import { atMost } from "../../formula/criteria.ts";
import { lineOf } from "../../formula/lookups.ts";
import {
  columnsOf,
  dateInput,
  keyInput,
  momentInput,
  moneyInput,
  numberInput,
  textInput,
  wordInput,
} from "../../model/columns.ts";
import type { ColumnDefinition, TableDefinition } from "../../model/definition.ts";
import { moneyLimits, priceByVolume, volume, volumeLimits } from "../../model/units-of.ts";
import { averageWords, stockKinds } from "../../model/words.ts";
import { stockAverage, stockAverageHelpers } from "./stock-average.ts";
import { countedAt, lastCountBefore, netSince, pouredSince } from "./stock-book.ts";

const { computed, helper } = columnsOf<"stockMoves">();

const amount = { type: "number", unit: volume, format: "0.000", width: 10 } as const;

const inputs: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Line", width: 13, required: true, help: "Running number." }),
  momentInput({
    id: "when",
    label: "When",
    width: 16,
    required: true,
    help:
      "Date and time. A day without a time stands for its end. In one minute Additions come first, then receipts and " +
      "issues, then counts; of two the lower row is the later.",
  }),
  keyInput({
    id: "concentrate",
    label: "Concentrate",
    width: 13,
    required: true,
    from: ["concentrates", "concentrate"],
    help: "From the Job sheet.",
  }),
  wordInput({
    id: "kind",
    label: "Kind",
    words: stockKinds,
    width: 10,
    required: true,
    help: "Count: what is on the shelf. Receipt: what came. Issue: what left it other than into a bath, such as a spill.",
  }),
  numberInput({
    id: "amount",
    label: "Amount",
    unit: volume,
    limits: volumeLimits,
    format: "0.000",
    width: 10,
    required: true,
    help: "Measure opened pails: an opened pail is not a full one.",
  }),
  {
    ...moneyInput({
      id: "price",
      label: "Price",
      width: 10,
      limits: moneyLimits,
      help: "Of a receipt; of a first count where it is not the pack's.",
    }),
    unit: priceByVolume,
  },
  textInput({ id: "document", label: "Document", width: 14, help: "Order, delivery note or invoice." }),
  textInput({ id: "lot", label: "Lot", width: 11, help: "From the pack." }),
  dateInput({ id: "expiry", label: "Expires", width: 12, help: "Last day by the pack, of a receipt." }),
  {
    ...numberInput({
      id: "averageAfter",
      label: "Average after",
      limits: moneyLimits,
      format: "0.00####",
      width: 10,
      help: "Moving weighted average from here on, as the pane writes it down. Later prices leave it alone.",
    }),
    unit: priceByVolume,
  },
  textInput({ id: "initials", label: "Initials", width: 10, help: "Who counted or received." }),
  textInput({ id: "note", label: "Note", width: 26, help: "Anything odd." }),
];

const results: readonly ColumnDefinition[] = [
  computed(
    {
      id: "book",
      label: "By the book",
      ...amount,
      help: "Last count before, with receipts, less issues and additions up to this line. Blank on a first count: it is the opening stock.",
    },
    ({ kind, order, countBefore, counted, since, poured }) =>
      blankIf([isBlank(order), all(is(kind, "count"), equal(countBefore, 0))], minus(plus(counted, since), poured)),
  ),
  computed(
    { id: "variance", label: "Variance", ...amount, help: "Count minus book: negative where some is missing." },
    (move) =>
      blankIf(
        [isNot(move.kind, "count"), isBlank(move.book), isNoNumber(move.amount)],
        rounded(minus(move.amount, move.book), 6),
      ),
  ),
  computed(
    {
      id: "value",
      label: "Value",
      type: "money",
      format: "#,##0.00",
      width: 10,
      help: "Of a receipt: amount times price. Of an issue and of a count's variance: at the average before.",
    },
    ({ valued, valuedAt }) => blankIf([isNoNumber(valued), isNoNumber(valuedAt)], toTheCent(times(valued, valuedAt))),
  ),
];

/** In days: what happens in a minute stands in this order within it, all of it nearer to this minute than to the next. */
const withinMinute = { others: 0.000_2, counts: 0.000_3 } as const;

const minutesADay = 1440;

const helpers: readonly ColumnDefinition[] = [
  // Ten digits behind the point, for COUNTIFS compares by text of 15: five for the time, five for the row.
  helper(
    {
      id: "order",
      label: "Order",
      type: "number",
      format: "0.0000000000",
      width: 16,
      help: "Time of the line with its kind and row as the last digits, so that no two are the same.",
    },
    (move, { stockMoves: lines }) => {
      const minute = when(
        equal(move.when, wholePart(move.when)),
        plus(move.when, (minutesADay - 1) / minutesADay),
      ).otherwise(dividedBy(rounded(times(move.when, minutesADay), 0), minutesADay));
      const place = when(is(move.kind, "count"), withinMinute.counts).otherwise(withinMinute.others);
      const row = dividedBy(lineOf(move.when, lines.when), 10_000_000_000);
      return blankIf(
        [isBlank(move.concentrate), isNoNumber(move.when)],
        rounded(plus(rounded(plus(minute, place), 5), row), 10),
      );
    },
  ),
  helper(
    {
      id: "net",
      label: "In or out",
      ...amount,
      help: "A receipt, or an issue with a minus; nothing for a count.",
    },
    (move) =>
      when(isNoNumber(move.amount), "")
        .when(is(move.kind, "receipt"), move.amount)
        .when(is(move.kind, "issue"), negative(move.amount))
        .otherwise(""),
  ),
  helper(
    {
      id: "countBefore",
      label: "Count before",
      type: "number",
      format: "0.0000000000",
      width: 16,
      help: "Order of the concentrate's last count before this line; 0 if none.",
    },
    ({ concentrate, order }, log) => blankIf([isBlank(order)], lastCountBefore(log, concentrate, order)),
  ),
  helper(
    { id: "counted", label: "Counted then", ...amount, help: "What that count found; 0 if none." },
    ({ concentrate, order, countBefore }, log) => blankIf([isBlank(order)], countedAt(log, concentrate, countBefore)),
  ),
  helper(
    { id: "since", label: "Since then", ...amount, help: "Receipts less issues up to this line." },
    ({ concentrate, order, countBefore }, log) =>
      blankIf([isBlank(order)], netSince(log, concentrate, countBefore, atMost(order))),
  ),
  helper(
    { id: "poured", label: "Into baths since", ...amount, help: "Additions since that count, up to this line." },
    ({ concentrate, order, countBefore }, log) =>
      blankIf([isBlank(order)], pouredSince(log, concentrate, countBefore, atMost(order))),
  ),
  ...stockAverageHelpers,
  helper(
    { id: "valued", label: "Amount valued", ...amount, help: "The amount; for a count, its difference from the book." },
    (move) => blankIf([isNoNumber(move.amount)], when(is(move.kind, "count"), move.variance).otherwise(move.amount)),
  ),
  helper(
    {
      id: "valuedAt",
      label: "Valued at",
      type: "number",
      unit: priceByVolume,
      format: "0.00####",
      width: 10,
      help: "Of a receipt its price, else the average before.",
    },
    ({ kind, price, averageBefore }) =>
      when(isNot(kind, "receipt"), averageBefore).otherwise(blankIf([isNoNumber(price)], price)),
  ),
];

export const stockMoves: TableDefinition = {
  id: "stockMoves",
  name: "StockMoves",
  entry: { word: "Stock line", letter: "S", about: ["concentrate", "kind"] },
  caption: "Counts, receipts and other issues: what went into a bath comes from Additions by itself",
  emptyRows: 1,
  columns: [...inputs, ...results, ...stockAverage, ...helpers],
  signals: [
    { column: "variance", when: { isNot: 0 }, look: "watch" },
    { column: "averageCheck", when: { is: averageWords.notWritten }, look: "watch" },
    { column: "averageCheck", when: { is: averageWords.another }, look: "watch" },
    { column: "averageCheck", when: { is: averageWords.noPrice }, look: "watch" },
  ],
};
