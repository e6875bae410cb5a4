import { countOfNumbers, dividedBy, joined, minus, plus, rounded, times, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber, isOver } from "../../formula/conditions.ts";
import { apply } from "../../formula/expression.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, matchIn, rowAt, thisLine } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { bathLines } from "./statement-baths.ts";

const { computed, helper } = columnsOf<"statementCharges">();

type Sum = ColumnId<"statementCharges"> & `to${string}`;

/**
 * What the kinds up to this one come to on the line, rounded once each, so that their differences add up to the cent:
 * of the whole bath as Baths has it, of the claim's part in the proportion of its share.
 */
function upTo(id: Sum, label: string, column: ColumnId<"baths">): ComputedColumn {
  return helper(
    { id, label, type: "money", format: "#,##0.00", width: 11, help: "Of all kinds up to this one." },
    ({ bathRow, isPart, pool, share }, { baths }) => {
      const inBath = rowAt(baths, bathRow)[column];
      return blankIf(
        [isBlank(bathRow), isNoNumber(share)],
        when(equal(pool, 0), 0)
          .when(equal(isPart, 0), inBath)
          .otherwise(rounded(dividedBy(times(share, inBath), pool), 2)),
      );
    },
  );
}

/** One kind of cost: of the whole bath on one line, the claim's part of it on the next. */
function charge(
  id: ColumnId<"statementCharges">,
  label: string,
  width: number,
  help: string,
  until: Sum,
  before?: Sum,
): ComputedColumn {
  return computed({ id, label, type: "money", format: "#,##0.00;-#,##0.00;", width, help }, (line) =>
    blankIf(
      [isNoNumber(line[until])],
      rounded(before === undefined ? line[until] : minus(line[until], line[before]), 2),
    ),
  );
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
    charge("concentrate", "Concentrate", 18, "Additions of concentrate.", "toConcentrate"),
    charge("water", "Water", 11, "Priced water.", "toWater", "toConcentrate"),
    charge("labor", "Labor", 11, "Cost lines of labor.", "toLabor", "toWater"),
    charge("energy", "Energy", 11, "Cost lines of energy.", "toEnergy", "toLabor"),
    charge("supplies", "Supplies", 10, "Filters and the like.", "toSupplies", "toEnergy"),
    charge("disposal", "Disposal", 11, "Sludge, analyses.", "toDisposal", "toSupplies"),
    charge("other", "Other", 20, "All other cost lines.", "toOther", "toDisposal"),
    computed(
      { id: "total", label: "Total", type: "money", format: "#,##0.00", width: 11, help: "Of the line." },
      ({ isPart, pool, share }) => blankIf([isNoNumber(share)], when(equal(isPart, 1), share).otherwise(pool)),
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
    helper(
      { id: "pool", label: "To share out", type: "money", format: "#,##0.00", width: 11, help: "Of the bath." },
      ({ bathRow }, { baths }) => cellAtOrBlank(baths.pool, bathRow),
    ),
    upTo("toConcentrate", "To concentrate", "upToConcentrate"),
    upTo("toWater", "To water", "upToWater"),
    upTo("toLabor", "To labor", "upToLabor"),
    upTo("toEnergy", "To energy", "upToEnergy"),
    upTo("toSupplies", "To supplies", "upToSupplies"),
    upTo("toDisposal", "To disposal", "upToDisposal"),
    upTo("toOther", "To other", "pool"),
  ],
};
