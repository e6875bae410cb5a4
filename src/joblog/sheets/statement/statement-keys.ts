import { asText, countOfNumbers, dividedBy, joined, minus, plus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, is, isBlank, isFilled, isNoNumber, isNot, isOver, unequal } from "../../formula/conditions.ts";
import { above, atMost, countWhere } from "../../formula/criteria.ts";
import { apply, type Column, type Expression } from "../../formula/expression.ts";
import { cellAt, lineOf, matchIn, thisLine } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { itemStandings } from "../../model/words.ts";

const common = {
  id: "statementOrder",
  label: "In the statement",
  type: "number",
  format: "0.00000000",
  width: 16,
} as const;

/** A claim's first load in each bath is where the statement finds its baths. */
export const loadStatement: ComputedColumn = columnsOf<"loads">().helper(
  { ...common, help: "Order of the bath in the claim statement; blank on every load but the claim's first in a bath." },
  ({ firstOfClaim, claim, order }, { named }) =>
    blankIf([unequal(firstOfClaim, 1), unequal(claim, named.statementClaim)], order),
);

/** Later concentrate of the days on which the claim's loads were in that bath. */
export const additionStatement: ComputedColumn = columnsOf<"additions">().helper(
  { ...common, help: "Order of the top-up in the claim statement; blank on what does not belong there." },
  (row, { additions, statementUse }) => {
    const inItsDays = countWhere(statementUse, { bath: row.bath, from: atMost(row.when), until: above(row.when) });
    return blankIf(
      [isNot(row.kind, "concentrate"), is(row.purpose, "opening"), isNoNumber(row.when)],
      when(equal(inItsDays, 0), "").otherwise(plus(row.when, dividedBy(lineOf(row.when, additions.when), 100_000_000))),
    );
  },
);

/** The claim's row for each bath. */
export const shareStatement: ComputedColumn = columnsOf<"shares">().helper(
  { ...common, format: "0", help: "Row of a share of the statement's claim; blank on all others." },
  ({ claim, line }, { named }) => blankIf([isBlank(claim), unequal(claim, named.statementClaim)], line),
);

/** What the claim pays alone. */
export const costLineStatement: ComputedColumn = columnsOf<"costLines">().helper(
  { ...common, format: "0", help: "Row of a line that the statement's claim pays alone; blank on all others." },
  ({ claim, account, amount }, { costLines, named }) =>
    blankIf(
      [isBlank(claim), unequal(claim, named.statementClaim), isNot(account, "claims")],
      lineOf(amount, costLines.amount),
    ),
);

/** The claim's pieces that are not restorable. */
export const itemStatement: ComputedColumn = columnsOf<"items">().helper(
  { ...common, format: "0", help: "Row of a piece not restorable of the statement's claim; blank on all others." },
  ({ id, claim, standing }, { items, named }) => {
    const restorable = all(isNot(standing, itemStandings.notRestorable), isNot(standing, itemStandings.reasonMissing));
    return blankIf([isBlank(claim), unequal(claim, named.statementClaim), restorable], lineOf(id, items.id));
  },
);

/** Tables with rows that the statement shows. */
type Source = "loads" | "additions" | "items" | "shares" | "costLines";

/** Tables of the statement whose lines show them. */
type Listing =
  "statementBaths" | "statementUse" | "statementTopUps" | "statementItems" | "statementShares" | "statementAlone";

const { helper } = columnsOf<Listing>();

/** Whether there is more than fits, and this is the line that says so. */
const saysMore = (line: Expression, lines: number, found: Expression): Expression =>
  all(equal(line, lines), isOver(found, lines));

/** Where the k-th of the marked rows stands; a list that is too long gives its last line away to say so. */
export function listed(from: Source, into: Listing, lines: number): readonly ComputedColumn[] {
  return [
    helper(
      { id: "line", label: "Line", type: "whole number", format: "0", width: 6, help: "Running number of the line." },
      (_row, { named, [into]: { line } }) => blankIf([isBlank(named.statementClaim)], thisLine(line)),
    ),
    helper(
      {
        id: "sourceRow",
        label: "Row in the log",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Position of what the line shows.",
      },
      ({ line }, { [from]: { statementOrder } }) => {
        const found = countOfNumbers(statementOrder);
        return blankIf(
          [isBlank(line), isOver(line, found), saysMore(line, lines, found)],
          matchIn(apply("SMALL", statementOrder, line), statementOrder),
        );
      },
    ),
  ];
}

/** This row's cells that `listed` describes. */
interface Line {
  readonly line: Expression;
  readonly sourceRow: Expression;
}

/** The first cell of a line: what it is about, or how much more there is. */
export function firstOrMore(
  { line, sourceRow }: Line,
  marked: { readonly statementOrder: Column },
  shown: Column,
  lines: number,
): Expression {
  const found = countOfNumbers(marked.statementOrder);
  return when(isFilled(sourceRow), asText(cellAt(shown, sourceRow)))
    .when(saysMore(line, lines, found), joined("… ", minus(found, lines - 1), " more in the log"))
    .otherwise("");
}
