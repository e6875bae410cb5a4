import { asText, joined, minus, rounded, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber, isOver, unequal } from "../../formula/conditions.ts";
import { above, countWhere, largestWhere, smallestWhere, sumWhere, type Where } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { ColumnId, Log } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, matchIn, positionOf } from "../../formula/lookups.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { claimCost, costStanding } from "../../model/words.ts";
import { statementBaths, statementUse } from "./statement-baths.ts";
import { statementCharges } from "./statement-charges.ts";
import { statementCounts, statementItems, statementTopUps } from "./statement-lists.ts";
import { statementAlone, statementShares } from "./statement-shares.ts";

function ofClaim(
  id: string,
  name: string,
  label: string,
  column: ColumnId<"claims">,
  help: string,
  type: FieldDefinition["type"] = "text",
): FieldDefinition {
  return {
    id,
    name,
    label,
    type,
    help,
    formula: ({ claims, named }) => {
      const row = matchIn(named.statementClaim, claims.claim);
      const cell = cellAt(claims[column], row);
      return blankIf(
        [isBlank(named.statementClaim)],
        when(apply("ISNA", row), "").when(isBlank(cell), "").otherwise(cell),
      );
    },
  };
}

function loadDay(id: string, name: string, label: string, help: string, end: typeof smallestWhere): FieldDefinition {
  return {
    id,
    name,
    label,
    type: "date",
    help,
    formula: ({ loads, named }) => {
      const its: Where<"loads"> = { claim: named.statementClaim, when: above(0) };
      return blankIf(
        [isBlank(named.statementClaim), equal(countWhere(loads, its), 0)],
        wholePart(end(loads, "when", its)),
      );
    },
  };
}

/** In the order in which a person would put it right: the claim's own loads first. */
function standing({ claims, costLines, loads, named, shares }: Log): Expression {
  const claim = named.statementClaim;
  const because = (what: string, cell: Expression): Expression => joined(costStanding.provisional, what, cell);
  const load = smallestWhere(loads, "gapLine", { claim });
  const share = smallestWhere(shares, "openLine", { claim });
  const line = smallestWhere(costLines, "gapLine", { claim });
  const state = cellAtOrBlank(claims.costState, positionOf(claim, claims.claim));
  return when(unequal(state, claimCost.provisional), when(isBlank(state), "").otherwise(costStanding.placed))
    .when(isOver(load, 0), because("load ", cellAt(loads.gap, load)))
    .when(isOver(share, 0), because("bath ", cellAt(shares.bath, share)))
    .when(isOver(line, 0), because("cost line ", cellAt(costLines.gap, line)))
    .otherwise(because("load ", named.loadAstray));
}

const fields: readonly FieldDefinition[] = [
  {
    id: "statementClaim",
    name: "Statement.Claim",
    label: "Claim",
    type: "choice",
    choices: { kind: "column", table: "claims", column: "claim" },
    help: "Everything below is worked out for this claim.",
  },
  {
    id: "statementLetterhead",
    name: "Statement.Letterhead",
    label: "Shop",
    type: "text",
    help: "From the sheets Job and Shop.",
    formula: ({ named }) => {
      const also = (value: Expression): Expression => when(isBlank(value), "").otherwise(joined(" · ", value));
      return joined(named.shop, also(named.shopAddress), also(named.shopPhone), also(named.shopLicense));
    },
  },
  {
    id: "statementInvoice",
    name: "Statement.Invoice",
    label: "Invoice number",
    type: "text",
    help: "Of your own books.",
  },
  loadDay("statementFrom", "Statement.From", "Period from", "Day of the claim's first load.", smallestWhere),
  loadDay("statementUntil", "Statement.Until", "Period until", "Day of the claim's last load.", largestWhere),
  ofClaim("statementOwner", "Statement.Owner", "Owner", "owner", "From the Job sheet."),
  ofClaim("statementPolicy", "Statement.Policy", "Policy", "policy", "From the Job sheet."),
  ofClaim("statementAddress", "Statement.Address", "Loss address", "lossAddress", "From the Job sheet."),
  ofClaim("statementLossDate", "Statement.LossDate", "Loss date", "lossDate", "From the Job sheet.", "date"),
  ofClaim("statementLoss", "Statement.Loss", "Loss", "loss", "From the Job sheet."),
  ofClaim("statementInsurer", "Statement.Insurer", "Insurer", "insurer", "From the Job sheet."),
  ofClaim("statementAdjuster", "Statement.Adjuster", "Adjuster", "adjuster", "From the Job sheet."),
  ofClaim("statementArrived", "Statement.Arrived", "Arrived", "arrived", "From the Job sheet.", "date"),
  {
    id: "statementJob",
    name: "Statement.Job",
    label: "Job",
    type: "text",
    help: "From the Job sheet.",
    formula: ({ named }) => asText(named.jobNumber),
  },
  {
    id: "statementCost",
    name: "Statement.Cost",
    label: "Cost share",
    type: "money",
    help: "Its shares of all baths and what it pays alone; words as long as a share is not worked out.",
    formula: ({ claims, named, shares }) => {
      const row = positionOf(named.statementClaim, claims.claim);
      const isOpen = isOver(sumWhere(shares, "unworked", { claim: named.statementClaim }), 0);
      return blankIf(
        [isBlank(named.statementClaim), isBlank(row)],
        when(isOpen, "not complete: see below").otherwise(cellAt(claims.cost, row)),
      );
    },
  },
  {
    id: "statementCurrency",
    name: "Statement.Currency",
    label: "All amounts in",
    type: "text",
    help: "From the sheet Shop.",
    formula: ({ named }) => asText(named.currency),
  },
  {
    id: "statementState",
    name: "Statement.State",
    label: "Standing",
    type: "text",
    help: "Whether every cost is placed to the cent, or why the figures are provisional.",
    formula: standing,
    signals: [{ when: { startsWith: costStanding.provisional }, look: "act" }],
  },
  {
    id: "statementPosted",
    name: "Statement.Posted",
    label: "Posted so far",
    type: "money",
    help: "What the journal charged this claim, less what was reversed; blank where nothing was.",
    formula: ({ journal, named }) => {
      const its: Where<"journal"> = { claim: named.statementClaim, use: "claims" };
      return blankIf(
        [isBlank(named.statementClaim), equal(countWhere(journal, its), 0)],
        rounded(minus(sumWhere(journal, "debit", its), sumWhere(journal, "credit", its)), 2),
      );
    },
  },
  {
    id: "statementOff",
    name: "Statement.Off",
    label: "Changed since posted",
    type: "money",
    help: "Of the baths that were posted: what the claim pays now, less what was posted.",
    formula: ({ named, shares }) =>
      blankIf(
        [isNoNumber(named.statementPosted)],
        rounded(sumWhere(shares, "postedOff", { claim: named.statementClaim }), 2),
      ),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  { id: "statementBy", name: "Statement.By", label: "Prepared by", type: "text", help: "Who signs for this page." },
  { id: "statementDate", name: "Statement.Date", label: "Date", type: "date", help: "Day on which it was prepared." },
  {
    id: "statementAccepted",
    name: "Statement.Accepted",
    label: "Accepted by, date",
    type: "text",
    help: "Signed by the owner or the adjuster.",
  },
];

/** One printed page for the claim's file. */
export const claimStatementSheet: SheetDefinition = {
  id: "statement",
  name: "Claim statement",
  title: "Claim statement",
  purpose:
    "The chemistry and the cost of one claim's contents, taken from the log. Choose the claim in the framed cell.",
  caution:
    "Arithmetic aid: it shows what was logged and what follows from it. It does not prove that a piece is clean, safe or free of lead, nor what it is worth. The label, SDS and permit win. Readings stand as the shop took them, with the meter's drift taken out where a later check showed it.",
  fields,
  tables: [
    statementBaths,
    statementUse,
    statementTopUps,
    statementCounts,
    statementItems,
    statementShares,
    statementCharges,
    statementAlone,
  ],
  arrangement: "stacked",
  tabColor: "#1F4E57",
  pagesWide: 1,
  orientation: "portrait",
  document: true,
};
