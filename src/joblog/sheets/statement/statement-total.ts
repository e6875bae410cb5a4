import { joined, minus, plus, rounded } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { isBlank, isFilled, isOver, unequal } from "../../formula/conditions.ts";
import { countWhere, smallestWhere, sumWhere } from "../../formula/criteria.ts";
import type { Column, Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, positionOf } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { claimCost, type costKinds, costStanding } from "../../model/words.ts";
import { bathLines } from "./statement-baths.ts";

const { computed, helper } = columnsOf<"statementTotal">();

const money = { type: "money", format: "#,##0.00;-#,##0.00;" } as const;

/** Its part of every bath and, of a kind that a cost line can have, what it pays alone. */
function kind(
  id: "concentrate" | Exclude<(typeof costKinds)[number], "other">,
  label: string,
  width: number,
): ComputedColumn {
  return computed(
    { id, label, ...money, width, help: "Its part of all baths, and what it pays alone." },
    ({ unlisted }, { costLines, named, statementCharges }) => {
      const claim = named.statementClaim;
      const parts = sumWhere(statementCharges, id, { isPart: 1 });
      const all = id === "concentrate" ? parts : plus(parts, sumWhere(costLines, "alone", { claim, kind: id }));
      return blankIf([isBlank(claim), isOver(unlisted, 0)], rounded(all, 2));
    },
  );
}

/** What the first row says that keeps the claim's cost open; blank where none of that table does. */
function firstOpen(
  id: "openLoad" | "openBath" | "openLine",
  label: string,
  says: (log: Log) => Column,
  lineOf: (log: Log, claim: Expression) => Expression,
): ComputedColumn {
  return helper(
    { id, label, type: "text", width: 20, help: "The first that keeps the claim's cost open." },
    (_row, log) => {
      const line = lineOf(log, log.named.statementClaim);
      return when(isOver(line, 0), cellAt(says(log), line)).otherwise("");
    },
  );
}

/** What the claim is charged, summed under the columns of its charges. */
export const statementTotal: TableDefinition = {
  id: "statementTotal",
  name: "StatementTotal",
  caption: "Charged in all: its part of every bath and the costs of this claim alone",
  emptyRows: 1,
  fixedRows: true,
  columns: [
    computed(
      {
        id: "what",
        label: "Complete",
        type: "text",
        width: 13,
        help: "Whether every bath of the claim is in the sums, or how many are not.",
      },
      ({ unlisted, unworked }, { named }) =>
        blankIf(
          [isBlank(named.statementClaim)],
          when(isOver(unworked, 0), joined("baths left out: ", unworked))
            .when(isOver(unlisted, 0), "by bath only")
            .otherwise("all baths"),
        ),
    ),
    kind("concentrate", "Concentrate", 18),
    kind("water", "Water", 11),
    kind("labor", "Labor", 11),
    kind("energy", "Energy", 11),
    kind("supplies", "Supplies", 10),
    kind("disposal", "Disposal", 11),
    computed(
      {
        id: "other",
        label: "Other",
        ...money,
        width: 20,
        help: "What is left of the total: a kind of its own, or none.",
      },
      ({ concentrate, water, labor, energy, supplies, disposal, total, unlisted }, { named }) =>
        blankIf(
          [isBlank(named.statementClaim), isOver(unlisted, 0)],
          rounded(minus(total, concentrate, water, labor, energy, supplies, disposal), 2),
        ),
    ),
    computed(
      { id: "total", label: "Total", type: "money", format: "#,##0.00", width: 11, help: "The claim's cost share." },
      (_row, { costLines, named, shares }) => {
        const claim = named.statementClaim;
        return blankIf(
          [isBlank(claim)],
          rounded(plus(sumWhere(shares, "share", { claim }), sumWhere(costLines, "alone", { claim })), 2),
        );
      },
    ),
    helper(
      {
        id: "unworked",
        label: "Left out",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Baths of the claim whose share is not worked out.",
      },
      (_row, { named, shares }) =>
        blankIf([isBlank(named.statementClaim)], sumWhere(shares, "unworked", { claim: named.statementClaim })),
    ),
    helper(
      {
        id: "unlisted",
        label: "Not listed",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Baths of the claim beyond those that the page has lines for.",
      },
      (_row, { named, shares }) => {
        const its = countWhere(shares, { claim: named.statementClaim });
        return blankIf(
          [isBlank(named.statementClaim)],
          when(isOver(its, bathLines), minus(its, bathLines)).otherwise(0),
        );
      },
    ),
    helper(
      { id: "state", label: "State", type: "text", width: 11, help: "What Job says of the claim's cost." },
      (_row, { claims, named }) => cellAtOrBlank(claims.costState, positionOf(named.statementClaim, claims.claim)),
    ),
    firstOpen(
      "openLoad",
      "Open load",
      ({ loads }) => loads.gap,
      (log, claim) => smallestWhere(log.loads, "gapLine", { claim }),
    ),
    firstOpen(
      "openBath",
      "Open bath",
      ({ shares }) => shares.bath,
      (log, claim) => smallestWhere(log.shares, "openLine", { claim }),
    ),
    firstOpen(
      "openLine",
      "Open line",
      ({ costLines }) => costLines.gap,
      (log, claim) => smallestWhere(log.costLines, "gapLine", { claim }),
    ),
    helper(
      {
        id: "standing",
        label: "Standing",
        type: "text",
        width: 20,
        help: "Placed, or what is open, in the order in which a person would put it right.",
      },
      ({ state, openLoad, openBath, openLine }, { named }) => {
        const because = (what: string, cell: Expression): Expression => joined(costStanding.provisional, what, cell);
        return when(isBlank(state), "")
          .when(unequal(state, claimCost.provisional), costStanding.placed)
          .when(isFilled(openLoad), because("load ", openLoad))
          .when(isFilled(openBath), because("bath ", openBath))
          .when(isFilled(openLine), because("cost line ", openLine))
          .otherwise(because("load ", named.loadAstray));
      },
    ),
  ],
  signals: [
    { column: "what", when: { startsWith: "baths left out" }, look: "act" },
    { column: "what", when: { startsWith: "by bath" }, look: "watch" },
  ],
};
