import { countOfNumbers, joined, minus, plus, rounded, sum } from "../../formula/arithmetic.ts";
import { when } from "../../formula/choices.ts";
import { is, isBlank, isOver } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import { apply, type Column, type Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { cellAt } from "../../formula/lookups.ts";
import { bothHold, sumOfRows } from "../../formula/row-conditions.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { costLines } from "./cost-lines-table.ts";
import { sharesChart } from "./shares-chart.ts";
import { shares } from "./shares-table.ts";

/** How many additions have no cost: all that say what is open but for those that only lack an account. */
const unpricedAdditions = ({ additions }: Log): Expression =>
  minus(countOfNumbers(additions.gapLine), countWhere(additions, { gapWhy: "account missing" }));

/** The whole log, so that no cost is on no paper. */
const fields: readonly FieldDefinition[] = [
  {
    id: "costTotal",
    name: "Cost.Total",
    label: "All costs of the log",
    type: "money",
    help: "Additions and cost lines of every bath, and of none.",
    formula: ({ additions, costLines }) => rounded(plus(sum(additions.cost), sum(costLines.amount)), 2),
  },
  {
    id: "costOfAdditions",
    name: "Cost.Additions",
    label: "Additions in it",
    type: "money",
    help: "Concentrate and priced water, from the sheet Additions.",
    formula: ({ additions }) => rounded(sum(additions.cost), 2),
  },
  {
    id: "costOfLines",
    name: "Cost.Lines",
    label: "Cost lines in it",
    type: "money",
    help: "All amounts of the cost lines below, whoever pays.",
    formula: ({ costLines }) => rounded(sum(costLines.amount), 2),
  },
  {
    id: "costToClaims",
    name: "Cost.Claims",
    label: "Paid by claims",
    type: "money",
    help: "Sum of what the claims pay, from the sheet Job.",
    formula: ({ claims }) => rounded(sum(claims.cost), 2),
  },
  {
    id: "costShares",
    name: "Cost.Shares",
    label: "Shares in it",
    type: "money",
    help: "All shares of the table below.",
    formula: ({ shares }) => rounded(sum(shares.share), 2),
  },
  {
    id: "costAlone",
    name: "Cost.Alone",
    label: "Paid alone in it",
    type: "money",
    help: "Cost lines that one claim pays.",
    formula: ({ costLines }) => rounded(sum(costLines.alone), 2),
  },
  {
    id: "costToShop",
    name: "Cost.Shop",
    label: "Paid by the shop",
    type: "money",
    help: "On the shop's account, and baths that had rework and nothing else.",
    formula: ({ baths, costLines }) =>
      rounded(
        plus(
          sum(baths.costShop),
          sumOfRows(costLines.amount, bothHold(isBlank(costLines.bath), is(costLines.account, "shop"))),
        ),
        2,
      ),
  },
  {
    id: "costNotPlaced",
    name: "Cost.NotPlaced",
    label: "Not placed, must be 0.00",
    type: "money",
    help: "All costs minus what claims and shop pay: charged to no one yet.",
    formula: ({ named }) => rounded(minus(named.costTotal, named.costToClaims, named.costToShop), 2),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "costLeftOut",
    name: "Cost.LeftOut",
    label: "Rows left out, must be 0",
    type: "whole number",
    format: "0",
    help: "Additions, cost lines and shares without a figure to sum; the first is named in the next line.",
    formula: (log) =>
      plus(
        unpricedAdditions(log),
        countWhere(log.costLines, { check: "amount is no number" }),
        sum(log.shares.unworked),
      ),
    signals: [{ when: { isNot: 0 }, look: "act" }],
  },
  {
    id: "costOpen",
    name: "Cost.Open",
    label: "First row to complete",
    type: "text",
    help: "A load that no share counts, or a cost that nobody is charged with, and why; blank where there is none.",
    formula: ({ shares, loads, costLines, additions }) => {
      const first = (column: Column): Expression => apply("MIN", column);
      const named = (what: string, gap: Column, line: Column): Expression => joined(what, cellAt(gap, first(line)));
      return when(isOver(first(shares.gapLine), 0), named("share of ", shares.gap, shares.gapLine))
        .when(isOver(first(loads.gapLine), 0), named("load ", loads.gap, loads.gapLine))
        .when(isOver(first(costLines.gapLine), 0), named("cost line ", costLines.gap, costLines.gapLine))
        .when(isOver(first(additions.gapLine), 0), named("addition ", additions.gap, additions.gapLine))
        .otherwise("");
    },
  },
  {
    id: "loadAstray",
    name: "Loads.Astray",
    label: "Load of no bath",
    type: "text",
    help: "A load without a bath could be of any, so that every claim is provisional; blank where there is none.",
    formula: ({ loads }) => {
      const first = apply("MIN", loads.astrayLine);
      return when(isOver(first, 0), cellAt(loads.gap, first)).otherwise("");
    },
    signals: [{ when: { startsWith: "L" }, look: "act" }],
  },
];

export const costsSheet: SheetDefinition = {
  id: "costs",
  name: "Costs",
  title: "Costs and shares",
  purpose: "What the baths cost and which claim pays how much, to the cent, with the basis shown.",
  caution: "Shop mistakes are not claim costs: one wrong line and an adjuster doubts all of them.",
  fields,
  tables: [shares, costLines],
  charts: [sharesChart],
  arrangement: "stacked",
  tabColor: "#6B6B6B",
  pagesWide: 1,
  orientation: "landscape",
};
