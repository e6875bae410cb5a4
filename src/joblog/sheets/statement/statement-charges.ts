import { countOfNumbers, dividedBy, joined, minus, plus, rounded, times, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber, isOver } from "../../formula/conditions.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { Row } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, matchIn, rowAt, thisLine } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { bathLines } from "./statement-baths.ts";

const { computed, helper } = columnsOf<"statementCharges">();

type UpTo = (bath: Row<"baths">) => Expression | 0;

/** One kind of cost: of the whole bath on one line, the claim's part of it on the next. */
function charge(id: string, label: string, width: number, help: string, before: UpTo, until: UpTo): ComputedColumn {
  return computed({ id, label, type: "money", format: "#,##0.00;-#,##0.00;", width, help }, (line, { baths }) => {
    const bath = rowAt(baths, line.bathRow);
    const part = (sum: Expression | 0): Expression => rounded(dividedBy(times(line.share, sum), bath.pool), 2);
    const first = before(bath);
    return blankIf(
      [isBlank(line.bathRow), isNoNumber(line.share)],
      when(equal(bath.pool, 0), 0)
        .when(equal(line.isPart, 0), rounded(minus(until(bath), first), 2))
        .otherwise(rounded(first === 0 ? part(until(bath)) : minus(part(until(bath)), part(first)), 2)),
    );
  });
}

/** What a claim is charged, by kind: each line adds up to the bath's cost to share, or to the claim's share of it. */
export const statementCharges: TableDefinition = {
  id: "statementCharges",
  name: "StatementCharges",
  caption: "Charges by kind: each bath as a whole, and below it this claim's part",
  emptyRows: 2 * bathLines,
  fixedRows: true,
  columns: [
    computed(
      { id: "what", label: "Bath", type: "text", width: 13, help: "As above; then this claim's part." },
      ({ bathRow, isPart }, { baths }) =>
        blankIf(
          [isBlank(bathRow)],
          when(equal(isPart, 1), "its part").otherwise(joined(cellAt(baths.bath, bathRow), "")),
        ),
    ),
    charge(
      "concentrate",
      "Concentrate",
      18,
      "Additions of concentrate.",
      () => 0,
      (bath) => bath.upToConcentrate,
    ),
    charge(
      "water",
      "Water",
      11,
      "Priced water.",
      (bath) => bath.upToConcentrate,
      (bath) => bath.upToWater,
    ),
    charge(
      "labor",
      "Labor",
      11,
      "Cost lines of labor.",
      (bath) => bath.upToWater,
      (bath) => bath.upToLabor,
    ),
    charge(
      "energy",
      "Energy",
      11,
      "Cost lines of energy.",
      (bath) => bath.upToLabor,
      (bath) => bath.upToEnergy,
    ),
    charge(
      "supplies",
      "Supplies",
      10,
      "Filters and the like.",
      (bath) => bath.upToEnergy,
      (bath) => bath.upToSupplies,
    ),
    charge(
      "disposal",
      "Disposal",
      11,
      "Sludge, analyses.",
      (bath) => bath.upToSupplies,
      (bath) => bath.upToDisposal,
    ),
    charge(
      "other",
      "Other",
      20,
      "All other cost lines.",
      (bath) => bath.upToDisposal,
      (bath) => bath.pool,
    ),
    computed(
      { id: "total", label: "Total", type: "money", format: "#,##0.00", width: 11, help: "Of the line." },
      ({ bathRow, isPart, share }, { baths }) =>
        blankIf(
          [isBlank(bathRow), isNoNumber(share)],
          when(equal(isPart, 1), share).otherwise(rowAt(baths, bathRow).pool),
        ),
    ),
    helper(
      { id: "line", label: "Line", type: "whole number", format: "0", width: 6, help: "Running number of the line." },
      (_row, { named, statementCharges: { line } }) => blankIf([isBlank(named.statementClaim)], thisLine(line)),
    ),
    helper(
      { id: "isPart", label: "Part", type: "whole number", format: "0", width: 6, help: "1 for the claim's part." },
      ({ line }) => blankIf([isBlank(line)], minus(line, times(2, wholePart(dividedBy(minus(line, 1), 2))), 1)),
    ),
    helper(
      {
        id: "shareRow",
        label: "Share row",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Position in Shares of what the line shows.",
      },
      ({ line }, { shares: { statementOrder } }) => {
        const nth = plus(wholePart(dividedBy(minus(line, 1), 2)), 1);
        return blankIf(
          [isBlank(line)],
          blankIf(
            [isOver(nth, countOfNumbers(statementOrder))],
            matchIn(apply("SMALL", statementOrder, nth), statementOrder),
          ),
        );
      },
    ),
    helper(
      { id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
      ({ shareRow }, { shares }) => cellAtOrBlank(shares.bathRow, shareRow),
    ),
    helper(
      { id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "Of the claim in the bath." },
      ({ shareRow }, { shares }) => cellAtOrBlank(shares.share, shareRow),
    ),
  ],
};
