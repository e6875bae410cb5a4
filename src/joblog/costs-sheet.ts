import { computed, dateInput, keyInput, moneyInput, numberInput, textInput, wordInput } from "./columns.ts";
import type { FieldDefinition, SheetDefinition, TableDefinition } from "./definition.ts";
import { blankIf, quoted, where } from "./formulas.ts";
import { between } from "./units-of.ts";
import { accounts, shareBases } from "./words.ts";

const fields: readonly FieldDefinition[] = [
  { id: "shareBath", name: "Share.Bath", label: "Bath to share out", type: "choice", choices: { kind: "column", table: "baths", column: "bath" }, help: "The costs of this bath are shared below." },
  { id: "shareBasis", name: "Share.Basis", label: "Shared by", type: "choice", choices: { kind: "fixed", choices: shareBases }, help: "One basis for all claims of a bath; the units below are counted this way." },
  {
    id: "poolTotal", name: "Pool.Total", label: "To share out", type: "money", help: "Additions and cost lines of this bath on the account of claims.",
    formula: (r) => `=${blankIf([`${r.named("shareBath")}=""`],
      `ROUND(SUMIFS(${r.all("additions", "cost")},${where([[r.all("additions", "bath"), r.named("shareBath")], [r.all("additions", "account"), quoted("claims")]])})` +
      `+SUMIFS(${r.all("costLines", "amount")},${where([[r.all("costLines", "bath"), r.named("shareBath")], [r.all("costLines", "account"), quoted("claims")]])}),2)`)}`,
  },
  { id: "sharesTotal", name: "Shares.Total", label: "Shared out", type: "money", help: "Sum of the claims' shares.",
    formula: (r) => `=IF(COUNT(${r.all("shares", "share")})=0,"",ROUND(SUM(${r.all("shares", "share")}),2))` },
  { id: "sharesCheck", name: "Shares.Check", label: "Difference, must be 0.00", type: "money", help: "Anything else means a claim or its units are missing.",
    formula: (r) => `=IF(${r.named("sharesTotal")}="","",ROUND(${r.named("poolTotal")}-${r.named("sharesTotal")},2))`,
    signals: [{ when: { isNot: 0 }, look: "act" }] },
];

const costLines: TableDefinition = {
  id: "costLines",
  name: "CostLines",
  caption: "Cost lines: not concentrate and water, they come from Additions by themselves",
  emptyRows: 1,
  columns: [
    textInput({ id: "id", label: "Line", width: 9, help: "Running number." }),
    keyInput({ id: "bath", label: "Bath", width: 14, from: ["baths", "bath"], help: "A line without a bath is shared out with none." }),
    dateInput({ id: "date", label: "Date", width: 12, help: "Of the document." }),
    textInput({ id: "what", label: "What", width: 30, required: true, help: "Labor, electricity, filter bags, disposal." }),
    textInput({ id: "document", label: "Document", width: 16, help: "Invoice, time sheet or meter reading that proves it." }),
    moneyInput({ id: "amount", label: "Amount", width: 11, required: true, limits: between(-1_000_000, 1_000_000), help: "A credit is negative." }),
    wordInput({ id: "account", label: "Account", words: accounts, width: 9, help: "The shop's own mistakes go to the shop, never to a claim." }),
  ],
};

const shares: TableDefinition = {
  id: "shares",
  name: "Shares",
  caption: "Each claim's share",
  emptyRows: 1,
  columns: [
    keyInput({ id: "claim", label: "Claim", width: 14, required: true, from: ["claims", "claim"], help: "Every claim that was in the bath, once." }),
    numberInput({ id: "units", label: "Units", limits: between(0, 1_000_000), format: "0.##", width: 9, help: "Counted by the basis chosen above. Rework is not counted twice." }),
    computed({ id: "weight", label: "Part of all", type: "share", format: "0.0%", width: 9, help: "This claim's units of all units." },
      (r) => blankIf([`NOT(ISNUMBER(${r.here("units")}))`, `SUM(${r.all("shares", "units")})=0`], `${r.here("units")}/SUM(${r.all("shares", "units")})`)),
    computed({ id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "To the cent; the shares add up to the total exactly." },
      (r) => blankIf([`${r.here("claim")}=""`, `NOT(ISNUMBER(${r.here("units")}))`, `NOT(ISNUMBER(${r.named("poolTotal")}))`, `SUM(${r.all("shares", "units")})=0`],
        `INDEX(BATH.SHARE(${r.named("poolTotal")},${r.all("shares", "units")}),ROW(${r.here("claim")})-ROW(${r.header("shares", "claim")}),1)`)),
  ],
};

export const costsSheet: SheetDefinition = {
  id: "costs",
  name: "Costs",
  title: "Costs and shares",
  purpose: "What a bath cost and which claim bears how much, to the cent, with the basis shown.",
  caution: "Shop errors are not claim costs: one wrong line and an adjuster doubts all of them.",
  fields,
  tables: [costLines, shares],
  arrangement: "side by side",
  tabColor: "#6B6B6B",
  pagesWide: 1,
  orientation: "landscape",
};
