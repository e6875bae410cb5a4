import { joined, minus, plus, rounded } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { isBlank, isOver } from "../../formula/conditions.ts";
import { countWhere, sumWhere } from "../../formula/criteria.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import type { costKinds } from "../../model/words.ts";
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
      (_row, { named, shares }) => sumWhere(shares, "unworked", { claim: named.statementClaim }),
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
        return when(isOver(its, bathLines), minus(its, bathLines)).otherwise(0);
      },
    ),
  ],
  signals: [
    { column: "what", when: { startsWith: "baths left out" }, look: "act" },
    { column: "what", when: { startsWith: "by bath" }, look: "watch" },
  ],
};
