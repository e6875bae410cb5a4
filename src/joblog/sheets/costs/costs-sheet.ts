import { countOfNumbers, joined, minus, plus, rounded, sum } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isFilled, isNoNumber, isOver } from "../../formula/conditions.ts";
import { countWhere, sumWhere } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { matchIn } from "../../formula/lookups.ts";
import { bothHold, eitherHolds, rowsThatHold, sumOfRows } from "../../formula/row-conditions.ts";
import { dateInput, keyInput, moneyInput, textInput, wordInput } from "../../model/columns.ts";
import type { FieldDefinition, SheetDefinition, TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { accounts, shareBases } from "../../model/words.ts";
import { onAccount } from "./costs-on-account.ts";
import { sharesChart } from "./shares-chart.ts";
import { shares } from "./shares-table.ts";

/** Additions and cost lines that no sum has: their bath is not on Baths or their amount is no number. */
function notCounted({ additions, baths, costLines }: Log): Expression {
  const lost = ({ bath, amount }: Log["additions"] | Log["costLines"]): Expression =>
    rowsThatHold(
      eitherHolds(
        bothHold(isFilled(bath), apply("ISNA", matchIn(bath, baths.bath))),
        bothHold(isFilled(amount), isNoNumber(amount)),
      ),
    );
  return plus(lost(additions), lost(costLines));
}

/** Costs that neither claims nor shop bear: without an account, or without a bath. */
function borneByNobody({ additions, costLines }: Log): Expression {
  const onAccounts = accounts.map((account) => sumWhere(additions, "cost", { account }));
  return rounded(
    plus(
      minus(sum(additions.cost), ...onAccounts),
      sumOfRows(costLines.amount, eitherHolds(isBlank(costLines.bath), isBlank(costLines.account))),
    ),
    2,
  );
}

const fields: readonly FieldDefinition[] = [
  {
    id: "shareBath",
    name: "Share.Bath",
    label: "Bath to share out",
    type: "choice",
    choices: { kind: "column", table: "baths", column: "bath" },
    help: "The costs of this bath are shared below.",
  },
  {
    id: "shareBasis",
    name: "Share.Basis",
    label: "Shared by",
    type: "choice",
    choices: { kind: "fixed", choices: shareBases },
    help: "One basis for all claims of a bath; the units below are counted this way.",
  },
  {
    id: "poolTotal",
    name: "Pool.Total",
    label: "To share out",
    type: "money",
    help: "Additions and cost lines of this bath on the account of claims.",
    formula: (log) => blankIf([isBlank(log.named.shareBath)], onAccount(log, log.named.shareBath, "claims")),
  },
  {
    id: "sharesTotal",
    name: "Shares.Total",
    label: "Shared out",
    type: "money",
    help: "Sum of the claims' shares.",
    formula: ({ shares: { share } }) => when(equal(countOfNumbers(share), 0), "").otherwise(rounded(sum(share), 2)),
  },
  {
    id: "sharesCheck",
    name: "Shares.Check",
    label: "Difference, must be 0.00",
    type: "money",
    help: "Anything else means a share is not worked out.",
    formula: ({ named: { poolTotal, sharesTotal } }) =>
      blankIf([isBlank(sharesTotal)], rounded(minus(poolTotal, sharesTotal), 2)),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "loadsLeftOut",
    name: "Loads.LeftOut",
    label: "Loads without a share, must be 0",
    type: "whole number",
    format: "0",
    help: "Loads of this bath that no share below counts: claim, soil or minutes missing, or a claim not in the list. Below 0: a claim is listed twice.",
    formula: ({ loads, named: { shareBath, shareBasis }, shares: claims }) =>
      blankIf(
        [isBlank(shareBath), isBlank(shareBasis)],
        minus(countWhere(loads, { bath: shareBath }), sum(claims.loads)),
      ),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "shopTotal",
    name: "Shop.Total",
    label: "Paid by the shop",
    type: "money",
    help: "Additions and cost lines of this bath on the shop's account: on no claim.",
    formula: (log) => blankIf([isBlank(log.named.shareBath)], onAccount(log, log.named.shareBath, "shop")),
  },
  {
    id: "notAllocated",
    name: "Not.Allocated",
    label: "Not charged to anyone, must be 0.00",
    type: "money",
    help: "Additions without an account and cost lines without a bath or account, of the whole log: not charged to anyone yet. Not counted: a bath that is not on Baths, an amount that is no number.",
    formula: (log) => {
      const lost = notCounted(log);
      return when(isOver(lost, 0), joined("lines not counted: ", lost)).otherwise(borneByNobody(log));
    },
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
];

const costLines: TableDefinition = {
  id: "costLines",
  name: "CostLines",
  entry: { word: "Cost line", letter: "C", about: ["what"] },
  caption: "Cost lines: not concentrate and water, they come from Additions by themselves",
  emptyRows: 1,
  columns: [
    textInput({ id: "id", label: "Line", width: 14, help: "Running number." }),
    keyInput({
      id: "bath",
      label: "Bath",
      width: 14,
      from: ["baths", "bath"],
      help: "A line without a bath is shared out with none.",
    }),
    dateInput({ id: "date", label: "Date", width: 12, help: "Of the document." }),
    textInput({
      id: "what",
      label: "What",
      width: 24,
      required: true,
      help: "Labor, electricity, filter bags, disposal.",
    }),
    textInput({
      id: "document",
      label: "Document",
      width: 16,
      help: "Invoice, time sheet or meter reading that proves it.",
    }),
    moneyInput({
      id: "amount",
      label: "Amount",
      width: 11,
      required: true,
      limits: between(-1_000_000, 1_000_000),
      help: "A credit is negative.",
    }),
    wordInput({
      id: "account",
      label: "Account",
      words: accounts,
      width: 9,
      help: "The shop's own mistakes go to the shop, never to a claim.",
    }),
  ],
};

export const costsSheet: SheetDefinition = {
  id: "costs",
  name: "Costs",
  title: "Costs and shares",
  purpose: "What a bath cost and which claim pays how much, to the cent, with the basis shown.",
  caution: "Shop mistakes are not claim costs: one wrong line and an adjuster doubts all of them.",
  fields,
  tables: [shares, costLines],
  charts: [sharesChart],
  arrangement: "stacked",
  tabColor: "#6B6B6B",
  pagesWide: 1,
  orientation: "landscape",
};
