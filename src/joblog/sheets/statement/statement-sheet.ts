import { asText, countOfNumbers, sum } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, isBlank, isOver, isUnder } from "../../formula/conditions.ts";
import { apply } from "../../formula/expression.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAt, matchIn } from "../../formula/lookups.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { statementBaths, statementUse } from "./statement-baths.ts";
import { statementCounts, statementItems, statementTopUps } from "./statement-lists.ts";
import { statementShares } from "./statement-shares.ts";

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

const fields: readonly FieldDefinition[] = [
  {
    id: "statementClaim",
    name: "Statement.Claim",
    label: "Claim",
    type: "choice",
    choices: { kind: "column", table: "claims", column: "claim" },
    help: "Everything below is worked out for this claim.",
  },
  ofClaim("statementLoss", "Statement.Loss", "Loss", "loss", "From the Job sheet."),
  ofClaim("statementInsurer", "Statement.Insurer", "Insurer", "insurer", "From the Job sheet."),
  ofClaim("statementAdjuster", "Statement.Adjuster", "Adjuster", "adjuster", "From the Job sheet."),
  ofClaim("statementArrived", "Statement.Arrived", "Arrived", "arrived", "From the Job sheet.", "date"),
  {
    id: "statementShop",
    name: "Statement.Shop",
    label: "Shop",
    type: "text",
    help: "From the Job sheet.",
    formula: ({ named }) => asText(named.shop),
  },
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
    help: "Sum of the shares below; words as long as one is open.",
    formula: ({ loads, named, statementShares: { sourceRow, share } }) => {
      const lines = countOfNumbers(sourceRow);
      const isOpen = any(isUnder(countOfNumbers(share), lines), isOver(countOfNumbers(loads.statementOrder), lines));
      return blankIf(
        [isBlank(named.statementClaim), equal(lines, 0)],
        when(isOpen, "not complete: see below").otherwise(sum(share)),
      );
    },
  },
  { id: "statementBy", name: "Statement.By", label: "Prepared by", type: "text", help: "Who signs for this page." },
  { id: "statementDate", name: "Statement.Date", label: "Date", type: "date", help: "Day on which it was prepared." },
];

/** One printed page for the claim's file. */
export const claimStatementSheet: SheetDefinition = {
  id: "statement",
  name: "Claim statement",
  title: "Claim statement",
  purpose:
    "The chemistry of one claim's contents on one page, taken from the log. Choose the claim in the framed cell.",
  caution:
    "Arithmetic aid: it shows what was logged and what follows from it. It does not prove that a piece is clean, safe or free of lead, nor what it is worth. The label, SDS and permit win. Readings stand as the shop took them, with the meter's drift taken out where a later check showed it.",
  fields,
  tables: [statementBaths, statementUse, statementTopUps, statementCounts, statementItems, statementShares],
  arrangement: "stacked",
  tabColor: "#1F4E57",
  pagesWide: 1,
  orientation: "portrait",
  document: true,
};
