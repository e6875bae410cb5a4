import { joined, sum, times, toTheCent } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, is, isBlank, isNoNumber, isNot, isNumber, isOver } from "../../formula/conditions.ts";
import type { Column, Expression } from "../../formula/expression.ts";
import { cellAt, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { priceByVolume } from "../../model/units-of.ts";
import { costBases } from "../../model/words.ts";
import { gapLine } from "../costs/gap-line.ts";
import { averageOr, lastAverageBefore } from "../stock/stock-book.ts";

const { computed, helper } = columnsOf<"additions">();

export const additionCost: ComputedColumn = computed(
  {
    id: "cost",
    label: "Cost",
    type: "money",
    format: "#,##0.00",
    width: 10,
    help: "Amount times price, to the cent; blank where no price is known.",
  },
  ({ bathRow, amount, price }) =>
    blankIf([isBlank(bathRow), isNoNumber(amount), isNoNumber(price)], toTheCent(times(amount, price))),
);

/** The cell at a position that is known to exist, blank where it is. */
function filledCell(column: Column, position: Expression): Expression {
  const cell = cellAt(column, position);
  return blankIf([isBlank(cell)], cell);
}

/** Which of the prices the cost goes by. */
export const additionCostBasis: ComputedColumn = computed(
  {
    id: "costBasis",
    label: "Priced by",
    type: "text",
    words: Object.values(costBases),
    width: 14,
    help: "Posted: by the unit cost written down, which no later price changes.",
  },
  ({ unitCost, price, kind, priced }) =>
    when(isNoNumber(price), "")
      .when(isNumber(unitCost), costBases.posted)
      .when(is(kind, "water"), costBases.water)
      .when(isOver(sum(priced), 0), costBases.average)
      .otherwise(costBases.pack),
);

/** The price behind the cost, and why nobody is charged with it. */
export const additionCostHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "priced",
      label: "Receipt",
      type: "number",
      format: "0.0000000000",
      width: 16,
      help: "Order in Stock of the last line before with an average written down; 0 if none.",
    },
    (addition, log) =>
      blankIf([isBlank(addition.concentrate)], lastAverageBefore(log, addition.concentrate, addition.when)),
  ),
  helper(
    {
      id: "listRow",
      label: "Price row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position in Concentrates or Waters.",
    },
    ({ bathRow, kind, waterRow }, { baths }) =>
      when(isBlank(bathRow), "")
        .when(is(kind, "concentrate"), rowAt(baths, bathRow).concentrateRow)
        .when(is(kind, "water"), waterRow)
        .otherwise(""),
  ),
  helper(
    {
      id: "listPrice",
      label: "Listed price",
      type: "number",
      unit: priceByVolume,
      format: "0.00####",
      width: 9,
      help: "Pack price by pack size; of water its price.",
    },
    ({ kind, listRow }, { concentrates, waters }) =>
      when(isBlank(listRow), "")
        .when(is(kind, "water"), filledCell(waters.price, listRow))
        .otherwise(filledCell(concentrates.unitPrice, listRow)),
  ),
  helper(
    {
      id: "averageThen",
      label: "Average then",
      type: "number",
      unit: priceByVolume,
      format: "0.00####",
      width: 9,
      help: "What a unit of volume on the shelf had cost on average, else the listed price.",
    },
    ({ concentrate, priced, listPrice }, log) => averageOr(log, concentrate, priced, listPrice),
  ),
  helper(
    {
      id: "price",
      label: "Price used",
      type: "number",
      format: "0.00####",
      width: 9,
      help: "Unit cost as posted, else the average then.",
    },
    ({ unitCost, averageThen }) => when(isNumber(unitCost), unitCost).otherwise(averageThen),
  ),
  helper(
    { id: "gapWhy", label: "Why not placed", type: "text", width: 15, help: "What keeps the row from being charged." },
    ({ id, bath, bathRow, kind, amount, price, account }) =>
      when(all(isBlank(id), isBlank(bath), isBlank(amount)), "")
        .when(isBlank(bathRow), "bath missing")
        .when(isNoNumber(amount), "amount is no number")
        .when(isNumber(price), when(isBlank(account), "account missing").otherwise(""))
        .when(isNot(kind, "water"), "no price")
        .otherwise(""),
  ),
  helper(
    {
      id: "gap",
      label: "Not placed",
      type: "text",
      width: 26,
      help: "Addition and why nobody is charged with it; water without a price costs nothing.",
    },
    ({ id, gapWhy }): Expression => blankIf([isBlank(gapWhy)], joined(id, ": ", gapWhy)),
  ),
  gapLine<"additions">(({ gap }, { additions }) => [gap, additions.gap]),
];
