import { sum } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, is, isBlank, isNot } from "../../formula/conditions.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAt, positionOf } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { onAccount } from "../costs/costs-on-account.ts";
import { bathLines, claimsIn } from "./statement-baths.ts";
import { firstOrMore, listed } from "./statement-keys.ts";

const { computed, helper } = columnsOf<"statementShares">();

/** How a bath's cost comes to this claim. */
const ways = {
  shared: "shared out on Costs",
  alone: "alone in it: all of it",
  open: "choose this bath on Costs",
  missing: "claim not in the shares",
} as const;

function fromShares(
  id: string,
  column: ColumnId<"shares">,
  rest: Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">,
): ComputedColumn {
  return computed({ id, ...rest }, ({ how, shareRow }, { shares }) =>
    blankIf([isNot(how, ways.shared)], cellAt(shares[column], shareRow)),
  );
}

/** Its share of the cost of every bath it was in; a bath of its own needs no sharing. */
export const statementShares: TableDefinition = {
  id: "statementShares",
  name: "StatementShares",
  caption: "Share of cost by bath: what the shop pays is left out",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 14, help: "As above." }, (line, { loads }) =>
      firstOrMore(line, loads, loads.bath, bathLines),
    ),
    computed(
      { id: "basis", label: "Shared by", type: "text", width: 19, help: "One basis for all claims of a bath." },
      ({ how }, { named }) => blankIf([isNot(how, ways.shared)], named.shareBasis),
    ),
    computed(
      {
        id: "claims",
        label: "Claims in it",
        type: "whole number",
        format: "0",
        width: 11,
        help: "How many claims were in the bath.",
      },
      ({ bath, sourceRow }, { loads }) => blankIf([isBlank(sourceRow)], claimsIn(loads, bath)),
    ),
    fromShares("units", "unitsUsed", {
      label: "Its units",
      type: "number",
      format: "General",
      width: 11,
      help: "Counted by the basis.",
    }),
    computed(
      {
        id: "allUnits",
        label: "All units",
        type: "number",
        format: "General",
        width: 11,
        help: "Of all claims in the bath.",
      },
      ({ how }, { shares }) => blankIf([isNot(how, ways.shared)], sum(shares.unitsUsed)),
    ),
    fromShares("part", "weight", {
      label: "Part",
      type: "share",
      format: "0.0%",
      width: 10,
      help: "Its units of all units.",
    }),
    computed(
      {
        id: "pool",
        label: "To share out",
        type: "money",
        format: "#,##0.00",
        width: 11,
        help: "Additions and cost lines of the bath on the account of claims.",
      },
      ({ bath, sourceRow }, log) => blankIf([isBlank(sourceRow)], onAccount(log, bath, "claims")),
    ),
    computed(
      {
        id: "how",
        label: "How",
        type: "text",
        words: Object.values(ways),
        width: 25,
        help: "How the cost comes to this claim.",
      },
      ({ bath, claims, sourceRow, shareRow }, { named }) =>
        blankIf(
          [isBlank(sourceRow)],
          when(equal(bath, named.shareBath), when(isBlank(shareRow), ways.missing).otherwise(ways.shared))
            .when(equal(claims, 1), ways.alone)
            .otherwise(ways.open),
        ),
    ),
    computed(
      { id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "To the cent." },
      ({ how, pool, sourceRow, shareRow }, { shares }) =>
        blankIf(
          [isBlank(sourceRow)],
          when(is(how, ways.shared), cellAt(shares.share, shareRow)).when(is(how, ways.alone), pool).otherwise(""),
        ),
    ),
    ...listed("loads", "statementShares", bathLines),
    helper(
      {
        id: "shareRow",
        label: "Share row",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Position of the claim in Shares.",
      },
      (_row, { named, shares }) => positionOf(named.statementClaim, shares.claim),
    ),
  ],
  signals: [
    { column: "how", when: { startsWith: "choose" }, look: "watch" },
    { column: "how", when: { is: ways.missing }, look: "act" },
  ],
};
