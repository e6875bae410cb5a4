import { joined, minus, negative, plus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNumber, isOver } from "../../formula/conditions.ts";
import { sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { columnsOf, keyInput, numberInput } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { balanceWords, itemStandings } from "../../model/words.ts";
import { withoutPieces } from "./items-without-pieces.ts";

const { computed } = columnsOf<"itemCounts">();

type Standing = (typeof itemStandings)[keyof typeof itemStandings];

function piecesOf(claim: Expression, { items }: Log, standing: Standing): Expression {
  return sumWhere(items, "quantity", { claim, standing });
}

type Count = (piecesThat: (standing: Standing) => Expression) => Expression;

function count(id: string, label: string, width: number, help: string, pieces: Count): ComputedColumn {
  return computed({ id, label, type: "whole number", format: "0", width, help }, ({ claim }, log) =>
    blankIf(
      [isBlank(claim)],
      pieces((standing) => piecesOf(claim, log, standing)),
    ),
  );
}

/** Pieces that the five counts have, one way or another. */
function accountedFor({ restored, handCleaned, notRestorable, returned, pending }: Row<"itemCounts">): Expression {
  return plus(restored, handCleaned, notRestorable, returned, pending);
}

/** The balance that an adjuster checks first: pieces in against what became of them. */
export const itemCounts: TableDefinition = {
  id: "itemCounts",
  name: "ItemCounts",
  caption: "Balance of pieces by claim",
  emptyRows: 6,
  columns: [
    keyInput({
      id: "claim",
      label: "Claim",
      width: 12,
      required: true,
      from: ["claims", "claim"],
      help: "Every claim with items, once.",
    }),
    {
      ...numberInput({
        id: "received",
        label: "Counted in",
        limits: between(0, 1_000_000),
        format: "0",
        width: 11,
        help: "Pieces counted at the door: the list below is held against it.",
      }),
      type: "whole number",
    },
    computed(
      {
        id: "pieces",
        label: "Pieces listed",
        type: "whole number",
        format: "0",
        width: 11,
        help: "All pieces of the claim in the list below.",
      },
      ({ claim }, { items }) => blankIf([isBlank(claim)], sumWhere(items, "quantity", { claim })),
    ),
    computed(
      {
        id: "difference",
        label: "Difference",
        type: "whole number",
        format: "0",
        width: 10,
        help: "Counted in, or else listed, less what is accounted for; must be 0.",
      },
      (row) =>
        blankIf(
          [isBlank(row.claim)],
          minus(when(isNumber(row.received), row.received).otherwise(row.pieces), accountedFor(row)),
        ),
    ),
    computed(
      {
        id: "balance",
        label: "Balance",
        type: "text",
        width: 32,
        help: "The difference in words; a list alone cannot show that nothing is missing.",
      },
      ({ claim, received, difference, pending }, { items }) => {
        const uncounted = withoutPieces(items, claim);
        const andPending = when(equal(pending, 0), ", all accounted for").otherwise(", some pending");
        const balances = joined(
          when(isNumber(received), balanceWords.balances).otherwise(balanceWords.notCounted),
          andPending,
        );
        return blankIf(
          [isBlank(claim)],
          when(isOver(uncounted, 0), joined("lines without pieces: ", uncounted))
            .when(equal(difference, 0), balances)
            .when(isOver(difference, 0), joined(difference, " not accounted for"))
            .otherwise(joined(negative(difference), " more than came in")),
        );
      },
    ),
    count("restored", "Restored", 16, "By bath.", (of) => of(itemStandings.restored)),
    count("handCleaned", "Hand cleaned", 14, "By hand or by a specialist.", (of) =>
      plus(of(itemStandings.handCleaned), of(itemStandings.specialist)),
    ),
    count("notRestorable", "Not restorable", 11, "With or without a reason code.", (of) =>
      plus(of(itemStandings.notRestorable), of(itemStandings.reasonMissing)),
    ),
    count("returned", "Returned uncleaned", 11, "Returned as they came.", (of) => of(itemStandings.returned)),
    count("pending", "Pending", 12, "No outcome yet.", (of) => of(itemStandings.pending)),
  ],
  signals: [
    { column: "difference", when: { isNot: 0 }, look: "act" },
    { column: "balance", when: { startsWith: balanceWords.balances }, look: "good" },
    { column: "balance", when: { startsWith: balanceWords.notCounted }, look: "watch" },
    { column: "balance", when: { startsWith: "lines" }, look: "act" },
  ],
};
