import { asText, joined, minus, rounded, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber, isOver } from "../../formula/conditions.ts";
import { above, countWhere, largestWhere, smallestWhere, sumWhere, type Where } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAt, matchIn, positionOf } from "../../formula/lookups.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { costStanding } from "../../model/words.ts";
import { statementBaths, statementUse } from "./statement-baths.ts";
import { statementCharges } from "./statement-charges.ts";
import { statementCounts, statementItems, statementTopUps } from "./statement-lists.ts";
import { statementAlone, statementShares } from "./statement-shares.ts";
import { statementTotal } from "./statement-total.ts";

type Place = Pick<FieldDefinition, "beside" | "signed">;

interface OfClaim extends Place {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly column: ColumnId<"claims">;
  readonly type?: FieldDefinition["type"];
}

/** What the sheet Job says of the claim. */
function ofClaim({ column, type = "text", ...rest }: OfClaim): FieldDefinition {
  return {
    ...rest,
    type,
    help: "From the claim's row on the sheet Job.",
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

type LoadDay = Pick<FieldDefinition, "id" | "name" | "label" | "help"> & Place;

function loadDay(rest: LoadDay, end: typeof smallestWhere): FieldDefinition {
  return {
    ...rest,
    type: "date",
    formula: ({ loads, named }) => {
      const its: Where<"loads"> = { claim: named.statementClaim, when: above(0) };
      return blankIf(
        [isBlank(named.statementClaim), equal(countWhere(loads, its), 0)],
        wholePart(end(loads, "when", its)),
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
    help: "Choose the claim: the whole page is worked out for it.",
  },
  ofClaim({
    id: "statementInvoice",
    name: "Statement.Invoice",
    label: "Invoice number",
    column: "invoice",
    beside: true,
  }),
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
  ofClaim({ id: "statementInsurer", name: "Statement.Insurer", label: "Insurer", column: "insurer" }),
  ofClaim({
    id: "statementAdjuster",
    name: "Statement.Adjuster",
    label: "Adjuster",
    column: "adjuster",
    beside: true,
  }),
  ofClaim({ id: "statementOwner", name: "Statement.Owner", label: "Owner", column: "owner" }),
  ofClaim({ id: "statementPolicy", name: "Statement.Policy", label: "Policy", column: "policy", beside: true }),
  ofClaim({ id: "statementAddress", name: "Statement.Address", label: "Loss address", column: "lossAddress" }),
  ofClaim({
    id: "statementLossDate",
    name: "Statement.LossDate",
    label: "Loss date",
    column: "lossDate",
    type: "date",
    beside: true,
  }),
  ofClaim({ id: "statementLoss", name: "Statement.Loss", label: "Loss", column: "loss" }),
  loadDay(
    { id: "statementFrom", name: "Statement.From", label: "Period from", help: "Days of its first and last load." },
    smallestWhere,
  ),
  loadDay(
    {
      id: "statementUntil",
      name: "Statement.Until",
      label: "Period until",
      help: "Day of the claim's last load.",
      beside: true,
    },
    largestWhere,
  ),
  {
    id: "statementJob",
    name: "Statement.Job",
    label: "Job",
    type: "text",
    help: "From the Job sheet.",
    formula: ({ named }) => asText(named.jobNumber),
  },
  ofClaim({
    id: "statementArrived",
    name: "Statement.Arrived",
    label: "Arrived",
    column: "arrived",
    type: "date",
    beside: true,
  }),
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
    id: "statementPosted",
    name: "Statement.Posted",
    label: "Posted so far",
    type: "money",
    beside: true,
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
    id: "statementCurrency",
    name: "Statement.Currency",
    label: "All amounts in",
    type: "text",
    help: "From the sheet Shop.",
    formula: ({ named }) => asText(named.currency),
  },
  {
    id: "statementOff",
    name: "Statement.Off",
    label: "Changed since posted",
    type: "money",
    beside: true,
    help: "Of the baths that were posted: what the claim pays now, less what was posted.",
    formula: ({ named, shares }) =>
      blankIf(
        [isNoNumber(named.statementPosted)],
        rounded(sumWhere(shares, "postedOff", { claim: named.statementClaim }), 2),
      ),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "statementState",
    name: "Statement.State",
    label: "Standing",
    type: "text",
    help: "Whether every cost is placed to the cent, or why the figures are provisional.",
    formula: ({ statementTotal }) => asText(cellAt(statementTotal.standing, 1)),
    signals: [{ when: { startsWith: costStanding.provisional }, look: "act" }],
  },
  ofClaim({ id: "statementBy", name: "Statement.By", label: "Prepared by", column: "preparedBy", signed: true }),
  ofClaim({
    id: "statementDate",
    name: "Statement.Date",
    label: "Date",
    column: "preparedOn",
    type: "date",
    beside: true,
    signed: true,
  }),
  ofClaim({
    id: "statementAccepted",
    name: "Statement.Accepted",
    label: "Accepted by, date",
    column: "acceptedBy",
    signed: true,
  }),
];

/** Pages for the claim's file: first what it is charged, so that no page ends before that, then the chemistry. */
export const claimStatementSheet: SheetDefinition = {
  id: "statement",
  name: "Claim statement",
  title: "Claim statement",
  purpose: "Cost and chemistry of one claim's contents, taken from the log of the shop.",
  caution:
    "Arithmetic aid: it shows what was logged and what follows from it. It does not prove that a piece is clean, safe or free of lead, nor what it is worth. The label, SDS and permit win. Readings stand as the shop took them, with the meter's drift taken out where a later check showed it.",
  fields,
  tables: [
    statementShares,
    statementCharges,
    statementAlone,
    statementTotal,
    statementBaths,
    statementUse,
    statementTopUps,
    statementCounts,
    statementItems,
  ],
  arrangement: "stacked",
  tabColor: "#1F4E57",
  pagesWide: 1,
  orientation: "portrait",
  document: true,
};
