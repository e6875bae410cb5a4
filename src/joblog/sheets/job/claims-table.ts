import { plus, rounded } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, isBlank, isFilled, isOver } from "../../formula/conditions.ts";
import { above, countWhere, sumWhere } from "../../formula/criteria.ts";
import { columnsOf, dateInput, nameInput, textInput } from "../../model/columns.ts";
import type { InputColumn, TableDefinition } from "../../model/definition.ts";
import { claimCost } from "../../model/words.ts";

const { computed, helper } = columnsOf<"claims">();

/** They stand with their claim: typed on the statement's page they would pass to whatever claim is shown next. */
const ofItsStatement: readonly InputColumn[] = [
  textInput({ id: "invoice", label: "Invoice number", width: 13, help: "Of your own books, for its claim statement." }),
  textInput({ id: "preparedBy", label: "Prepared by", width: 12, help: "Who signs for its claim statement." }),
  dateInput({
    id: "preparedOn",
    label: "Prepared on",
    width: 11,
    help: "Day on which its claim statement was prepared.",
  }),
  textInput({ id: "acceptedBy", label: "Accepted by, date", width: 16, help: "Signed by the owner or the adjuster." }),
].map((column) => ({ ...column, unprinted: true }));

export const claimsTable: TableDefinition = {
  id: "claims",
  name: "Claims",
  caption: "Claims",
  emptyRows: 6,
  columns: [
    nameInput({ id: "claim", label: "Claim", width: 13, help: "The insurer's reference, once for each claim." }),
    textInput({ id: "loss", label: "Loss", width: 14, help: "What happened, in a few words." }),
    textInput({ id: "insurer", label: "Insurer", width: 26, help: "Who pays." }),
    textInput({ id: "adjuster", label: "Adjuster", width: 11, help: "Who the statement goes to." }),
    dateInput({ id: "arrived", label: "Arrived", width: 11, help: "Day the contents came in." }),
    textInput({
      id: "note",
      label: "Note",
      width: 11,
      help: "Anything the file should say, such as old paint or lead suspected.",
    }),
    textInput({ id: "policy", label: "Policy", width: 14, help: "Number of the policy." }),
    textInput({ id: "owner", label: "Owner", width: 9, help: "Whose contents they are." }),
    textInput({ id: "lossAddress", label: "Loss address", width: 14, help: "Where the loss was." }),
    dateInput({ id: "lossDate", label: "Loss date", width: 10, help: "Day of the loss." }),
    computed(
      {
        id: "cost",
        label: "Cost so far",
        type: "money",
        format: "#,##0.00",
        width: 9,
        help: "Its shares of all baths and what it pays alone.",
      },
      ({ claim }, { shares, costLines }) =>
        blankIf(
          [isBlank(claim)],
          rounded(plus(sumWhere(shares, "share", { claim }), sumWhere(costLines, "alone", { claim })), 2),
        ),
    ),
    computed(
      {
        id: "costState",
        label: "Cost is",
        type: "text",
        words: Object.values(claimCost),
        width: 10,
        help: "Provisional as long as a row of its baths keeps the cost from being placed: its statement says which.",
      },
      ({ claim, openRows }, { loads, named, shares }) =>
        blankIf(
          [isBlank(claim), equal(plus(countWhere(loads, { claim }), countWhere(shares, { claim })), 0)],
          when(any(isOver(openRows, 0), isFilled(named.loadAstray)), claimCost.provisional).otherwise(claimCost.placed),
        ),
    ),
    ...ofItsStatement,
    helper(
      {
        id: "openRows",
        label: "Rows open",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Shares, loads and cost lines of the claim that are not placed.",
      },
      ({ claim }, { costLines, loads, shares }) =>
        blankIf(
          [isBlank(claim)],
          plus(
            countWhere(shares, { claim, openLine: above(0) }),
            countWhere(loads, { claim, gapLine: above(0) }),
            countWhere(costLines, { claim, gapLine: above(0) }),
          ),
        ),
    ),
  ],
  signals: [
    { column: "costState", when: { is: claimCost.provisional }, look: "watch" },
    { column: "costState", when: { is: claimCost.placed }, look: "good" },
  ],
};
