import { minus, rounded, times, toTheCent, wholePart } from "../../formula/arithmetic.ts";
import { blankIf } from "../../formula/choices.ts";
import { all, equal, is, isBlank, isNoNumber, isNot } from "../../formula/conditions.ts";
import { atMost } from "../../formula/criteria.ts";
import { columnsOf, dateInput, keyInput, moneyInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { moneyLimits, priceByVolume, volume, volumeLimits } from "../../model/units-of.ts";
import { stockKinds } from "../../model/words.ts";
import { bookSince, lastCountBefore } from "./stock-book.ts";

const { computed, helper } = columnsOf<"stockMoves">();

const amount = { type: "number", unit: volume, format: "0.000", width: 10 } as const;

export const stockMoves: TableDefinition = {
  id: "stockMoves",
  name: "StockMoves",
  entry: { word: "Stock line", letter: "S", about: ["concentrate", "kind"] },
  caption: "Counts, receipts and other issues: what went into a bath comes from Additions by itself",
  emptyRows: 1,
  columns: [
    textInput({ id: "id", label: "Line", width: 13, required: true, help: "Running number." }),
    dateInput({
      id: "when",
      label: "Day",
      width: 12,
      required: true,
      help: "A count stands for the end of its day, after what was issued and received on it.",
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
      help: "Measure opened pails: a pail is not full because it stands there.",
    }),
    {
      ...moneyInput({ id: "price", label: "Price", width: 10, limits: moneyLimits, help: "Of a receipt." }),
      unit: priceByVolume,
    },
    textInput({ id: "document", label: "Document", width: 14, help: "Order, delivery note or invoice." }),
    textInput({ id: "lot", label: "Lot", width: 11, help: "From the pack." }),
    textInput({ id: "initials", label: "Initials", width: 10, help: "Who counted or received." }),
    textInput({ id: "note", label: "Note", width: 26, help: "Anything odd." }),
    computed(
      {
        id: "book",
        label: "By the book",
        ...amount,
        help: "Last count before, with receipts, less issues and additions up to the end of this day. Blank on a first count: it is the opening stock.",
      },
      ({ concentrate, kind, day, countBefore }, log) =>
        blankIf(
          [isBlank(day), isBlank(concentrate), all(is(kind, "count"), equal(countBefore, 0))],
          bookSince(log, concentrate, countBefore, atMost(day)),
        ),
    ),
    computed(
      { id: "variance", label: "Variance", ...amount, help: "Count less book: negative where some is missing." },
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
        help: "Of a receipt: amount by price.",
      },
      (move) =>
        blankIf(
          [isNot(move.kind, "receipt"), isNoNumber(move.amount), isNoNumber(move.price)],
          toTheCent(times(move.amount, move.price)),
        ),
    ),
    helper(
      {
        id: "day",
        label: "Day number",
        type: "whole number",
        format: "0",
        width: 9,
        help: "The day without its time.",
      },
      (move) => blankIf([isNoNumber(move.when)], wholePart(move.when)),
    ),
    helper(
      {
        id: "countBefore",
        label: "Count before",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Day of the concentrate's last count before this day; 0 if none.",
      },
      ({ concentrate, day }, log) => blankIf([isBlank(day)], lastCountBefore(log, concentrate, day)),
    ),
  ],
  signals: [{ column: "variance", when: { isNot: 0 }, look: "watch" }],
};
