import { absolute, dividedBy, minus, plus, rounded, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  equal,
  is,
  isAtMost,
  isBlank,
  isFilled,
  isNoNumber,
  isNot,
  isNumber,
  isOver,
  unequal,
} from "../../formula/conditions.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { priceByVolume, volume } from "../../model/units-of.ts";
import { averageWords } from "../../model/words.ts";
import { averageOr, lastAverageBefore, packPriceOf } from "./stock-book.ts";

const { computed, helper } = columnsOf<"stockMoves">();

/** Of a unit of volume: enough that half a cent of an amount stays half a cent in every unit. */
const averageDigits = 10;

const average = { type: "number", unit: priceByVolume, format: "0.00####", width: 10 } as const;

/** What the average that was written down is held to. */
export const stockAverage: readonly ComputedColumn[] = [
  computed(
    {
      id: "averageWouldBe",
      label: "Average due",
      ...average,
      help: "Of a receipt: value on hand before and of what came, by the amount on hand after. Of a first count: its price, or the pack's.",
    },
    ({ kind, price, moving, priced, averageBefore }) =>
      when(is(kind, "receipt"), moving)
        .when(any(isNot(kind, "count"), unequal(priced, 0)), "")
        .when(isNumber(price), price)
        .when(isNumber(averageBefore), rounded(averageBefore, averageDigits))
        .otherwise(""),
  ),
  computed(
    {
      id: "averageCheck",
      label: "Average check",
      type: "text",
      words: Object.values(averageWords),
      width: 16,
      help: "Whether the average written down is what follows from the lines before; blank where it is.",
    },
    ({ kind, amount, averageAfter, averageWouldBe, priced }) =>
      when(
        isBlank(averageWouldBe),
        when(all(is(kind, "receipt"), isFilled(amount)), averageWords.noPrice).otherwise(""),
      )
        .when(isNoNumber(averageAfter), averageWords.notWritten)
        // Before the first average there is the pack's price alone, which may have changed since.
        .when(equal(priced, 0), "")
        .when(isOver(absolute(minus(averageAfter, averageWouldBe)), 0.000_05), averageWords.another)
        .otherwise(""),
  ),
];

export const stockAverageHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "priced",
      label: "Priced by",
      type: "number",
      format: "0.0000000000",
      width: 16,
      help: "Order of the last line before with an average written down; 0 if none.",
    },
    ({ concentrate, order }, log) => blankIf([isBlank(order)], lastAverageBefore(log, concentrate, order)),
  ),
  helper(
    { id: "packPrice", label: "Pack price", ...average, help: "By pack size, from the Job sheet." },
    ({ concentrate, order }, log) => blankIf([isBlank(order)], packPriceOf(log, concentrate)),
  ),
  helper(
    {
      id: "averageBefore",
      label: "Average then",
      ...average,
      help: "As written down on that line, else by the pack.",
    },
    ({ concentrate, priced, packPrice }, log) => averageOr(log, concentrate, priced, packPrice),
  ),
  helper(
    {
      id: "onHandBefore",
      label: "On hand then",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 10,
      help: "By the book, before a receipt.",
    },
    ({ kind, amount, book }) =>
      blankIf([isNot(kind, "receipt"), isNoNumber(book), isNoNumber(amount)], rounded(minus(book, amount), 6)),
  ),
  helper(
    {
      id: "worth",
      label: "Worth",
      type: "money",
      format: "#,##0.00",
      width: 10,
      help: "What was on hand by the average before, and the receipt by its price.",
    },
    ({ amount, price, onHandBefore, averageBefore }) =>
      blankIf(
        [isBlank(onHandBefore), isBlank(averageBefore), isNoNumber(price)],
        plus(times(onHandBefore, averageBefore), times(amount, price)),
      ),
  ),
  helper(
    {
      id: "moving",
      label: "Moving average",
      ...average,
      help: "Value on hand and of what came, by the amount on hand then; the price alone where nothing was on hand.",
    },
    ({ price, book, onHandBefore, averageBefore, worth }) =>
      when(any(isBlank(onHandBefore), isNoNumber(price)), "")
        .when(any(isBlank(worth), isAtMost(onHandBefore, 0)), price)
        .when(isAtMost(book, 0), averageBefore)
        .otherwise(rounded(dividedBy(worth, book), averageDigits)),
  ),
];
