import { dateInput, keyInput, moneyInput, textInput, wordInput } from "./columns.ts";
import type { FieldDefinition, References, SheetDefinition, TableDefinition } from "./definition.ts";
import { blankIf, quoted, where } from "./formulas.ts";
import { sharesChart } from "./shares-chart.ts";
import { shares } from "./shares-table.ts";
import { between } from "./units-of.ts";
import { accounts, shareBases } from "./words.ts";

/** Additions and cost lines of the chosen bath on an account. */
function onAccount(r: References, account: (typeof accounts)[number]): string {
  const sum = (table: "additions" | "costLines", amount: string): string =>
    `SUMIFS(${r.all(table, amount)},${where([[r.all(table, "bath"), r.named("shareBath")], [r.all(table, "account"), quoted(account)]])})`;
  return `ROUND(${sum("additions", "cost")}+${sum("costLines", "amount")},2)`;
}

/** Additions and cost lines that no sum has: their bath is not on Baths or their amount is no number. */
function notCounted(r: References): string {
  const lost = (table: "additions" | "costLines"): string => {
    const [bath, amount] = [r.all(table, "bath"), r.all(table, "amount")];
    return `SUMPRODUCT(--((${bath}<>"")*ISNA(MATCH(${bath},${r.all("baths", "bath")},0))+(${amount}<>"")*NOT(ISNUMBER(${amount}))>0))`;
  };
  return `(${lost("additions")}+${lost("costLines")})`;
}

const fields: readonly FieldDefinition[] = [
  { id: "shareBath", name: "Share.Bath", label: "Bath to share out", type: "choice", choices: { kind: "column", table: "baths", column: "bath" }, help: "The costs of this bath are shared below." },
  { id: "shareBasis", name: "Share.Basis", label: "Shared by", type: "choice", choices: { kind: "fixed", choices: shareBases }, help: "One basis for all claims of a bath; the units below are counted this way." },
  {
    id: "poolTotal", name: "Pool.Total", label: "To share out", type: "money", help: "Additions and cost lines of this bath on the account of claims.",
    formula: (r) => `=${blankIf([`${r.named("shareBath")}=""`],
      onAccount(r, "claims"))}`,
  },
  { id: "sharesTotal", name: "Shares.Total", label: "Shared out", type: "money", help: "Sum of the claims' shares.",
    formula: (r) => `=IF(COUNT(${r.all("shares", "share")})=0,"",ROUND(SUM(${r.all("shares", "share")}),2))` },
  { id: "sharesCheck", name: "Shares.Check", label: "Difference, must be 0.00", type: "money", help: "Anything else means a share is not worked out.",
    formula: (r) => `=IF(${r.named("sharesTotal")}="","",ROUND(${r.named("poolTotal")}-${r.named("sharesTotal")},2))`,
    signals: [{ when: { isNot: 0 }, look: "act" }] },
  { id: "loadsLeftOut", name: "Loads.LeftOut", label: "Loads without a share, must be 0", type: "whole number", format: "0", help: "Loads of this bath that no share below counts: claim, soil or minutes missing, or a claim not in the list. Below 0: a claim stands twice.",
    formula: (r) => `=${blankIf([`${r.named("shareBath")}=""`, `${r.named("shareBasis")}=""`], `COUNTIFS(${r.all("loads", "bath")},${r.named("shareBath")})-SUM(${r.all("shares", "loads")})`)}`,
    signals: [{ when: { isNot: 0 }, look: "act" }] },
  { id: "shopTotal", name: "Shop.Total", label: "Borne by the shop", type: "money", help: "Additions and cost lines of this bath on the shop's account: on no claim.",
    formula: (r) => `=${blankIf([`${r.named("shareBath")}=""`], onAccount(r, "shop"))}` },
  { id: "notAllocated", name: "Not.Allocated", label: "On no bath or account, must be 0.00", type: "money", help: "Additions without an account and cost lines without a bath or account, of the whole log: nobody bears them yet. Not counted: a bath that is not on Baths, an amount that is no number.",
    formula: (r) => {
      const costs = r.all("additions", "cost");
      const account = r.all("additions", "account");
      const byAccount = accounts.map((word) => `-SUMIFS(${costs},${account},${quoted(word)})`).join("");
      const open = `ROUND(SUM(${costs})${byAccount}+SUMPRODUCT(--((${r.all("costLines", "bath")}="")+(${r.all("costLines", "account")}="")>0),${r.all("costLines", "amount")}),2)`;
      return `=IF(${notCounted(r)}>0,"lines not counted: "&${notCounted(r)},${open})`;
    },
    signals: [{ when: { isNot: 0 }, look: "act" }] },
];

const costLines: TableDefinition = {
  id: "costLines",
  name: "CostLines",
  caption: "Cost lines: not concentrate and water, they come from Additions by themselves",
  emptyRows: 1,
  columns: [
    textInput({ id: "id", label: "Line", width: 14, help: "Running number." }),
    keyInput({ id: "bath", label: "Bath", width: 14, from: ["baths", "bath"], help: "A line without a bath is shared out with none." }),
    dateInput({ id: "date", label: "Date", width: 12, help: "Of the document." }),
    textInput({ id: "what", label: "What", width: 24, required: true, help: "Labor, electricity, filter bags, disposal." }),
    textInput({ id: "document", label: "Document", width: 16, help: "Invoice, time sheet or meter reading that proves it." }),
    moneyInput({ id: "amount", label: "Amount", width: 11, required: true, limits: between(-1_000_000, 1_000_000), help: "A credit is negative." }),
    wordInput({ id: "account", label: "Account", words: accounts, width: 9, help: "The shop's own mistakes go to the shop, never to a claim." }),
  ],
};

export const costsSheet: SheetDefinition = {
  id: "costs",
  name: "Costs",
  title: "Costs and shares",
  purpose: "What a bath cost and which claim bears how much, to the cent, with the basis shown.",
  caution: "Shop errors are not claim costs: one wrong line and an adjuster doubts all of them.",
  fields,
  tables: [shares, costLines],
  charts: [sharesChart],
  arrangement: "stacked",
  tabColor: "#6B6B6B",
  pagesWide: 1,
  orientation: "landscape",
};
