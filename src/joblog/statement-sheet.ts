import type { FieldDefinition, SheetDefinition } from "./definition.ts";
import { at, blankIf } from "./formulas.ts";
import { statementBaths, statementUse } from "./statement-baths.ts";
import { statementCounts, statementItems, statementTopUps } from "./statement-lists.ts";
import { statementShares } from "./statement-shares.ts";

function ofClaim(id: string, name: string, label: string, column: string, help: string, type: FieldDefinition["type"] = "text"): FieldDefinition {
  return {
    id, name, label, type, help,
    formula: (r) => {
      const row = `MATCH(${r.named("statementClaim")},${r.all("claims", "claim")},0)`;
      const cell = at(r, "claims", column, row);
      return `=${blankIf([`${r.named("statementClaim")}=""`], `IF(ISNA(${row}),"",IF(${cell}="","",${cell}))`)}`;
    },
  };
}

const fields: readonly FieldDefinition[] = [
  { id: "statementClaim", name: "Statement.Claim", label: "Claim", type: "choice", choices: { kind: "column", table: "claims", column: "claim" }, help: "Everything below is worked out for this claim." },
  ofClaim("statementLoss", "Statement.Loss", "Loss", "loss", "From the Job sheet."),
  ofClaim("statementInsurer", "Statement.Insurer", "Insurer", "insurer", "From the Job sheet."),
  ofClaim("statementAdjuster", "Statement.Adjuster", "Adjuster", "adjuster", "From the Job sheet."),
  ofClaim("statementArrived", "Statement.Arrived", "Arrived", "arrived", "From the Job sheet.", "date"),
  { id: "statementShop", name: "Statement.Shop", label: "Shop", type: "text", help: "From the Job sheet.", formula: (r) => `=${r.named("shop")}&""` },
  { id: "statementJob", name: "Statement.Job", label: "Job", type: "text", help: "From the Job sheet.", formula: (r) => `=${r.named("jobNumber")}&""` },
  {
    id: "statementCost", name: "Statement.Cost", label: "Cost share", type: "money", help: "Sum of the shares below; words as long as one is open.",
    formula: (r) => {
      const lines = `COUNT(${r.all("statementShares", "sourceRow")})`;
      return `=${blankIf([`${r.named("statementClaim")}=""`, `${lines}=0`], `IF(OR(COUNT(${r.all("statementShares", "share")})<${lines},COUNT(${r.all("loads", "statementOrder")})>${lines}),"not complete: see below",SUM(${r.all("statementShares", "share")}))`)}`;
    },
  },
  { id: "statementBy", name: "Statement.By", label: "Prepared by", type: "text", help: "Who answers for this page." },
  { id: "statementDate", name: "Statement.Date", label: "Date", type: "date", help: "Day on which it was prepared." },
];

/** One printed page for the claim's file. */
export const claimStatementSheet: SheetDefinition = {
  id: "statement",
  name: "Claim statement",
  title: "Claim statement",
  purpose: "The chemistry of one claim's contents on one page, taken from the log. Choose the claim in the framed cell.",
  caution: "Arithmetic aid: it shows what was logged and what follows from it. It does not prove that a piece is clean, safe or free of lead, nor what it is worth. The label, SDS and permit win. Readings stand as the shop took them, with the meter's drift taken out where a later check showed it.",
  fields,
  tables: [statementBaths, statementUse, statementTopUps, statementCounts, statementItems, statementShares],
  arrangement: "stacked",
  tabColor: "#1F4E57",
  pagesWide: 1,
  orientation: "portrait",
  document: true,
};
