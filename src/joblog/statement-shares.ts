import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { at, blankIf, positionOf, quoted, where } from "./formulas.ts";
import { bathLines } from "./statement-baths.ts";
import { firstOrMore, listed } from "./statement-keys.ts";

/** How a bath's cost comes to this claim. */
const ways = { shared: "shared out on Costs", alone: "alone in it: all of it", open: "choose this bath on Costs", missing: "claim not in the shares" } as const;

function fromShares(id: string, column: string, rest: Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">): ComputedColumn {
  return computed({ id, ...rest }, (r) => blankIf([`${r.here("how")}<>${quoted(ways.shared)}`], at(r, "shares", column, r.here("shareRow"))));
}

function claimsCosts(r: References): string {
  const sum = (table: "additions" | "costLines", amount: string): string =>
    `SUMIFS(${r.all(table, amount)},${where([[r.all(table, "bath"), r.here("bath")], [r.all(table, "account"), quoted("claims")]])})`;
  return `ROUND(${sum("additions", "cost")}+${sum("costLines", "amount")},2)`;
}

/** Its share of the cost of every bath it was in; a bath of its own needs no sharing. */
export const statementShares: TableDefinition = {
  id: "statementShares",
  name: "StatementShares",
  caption: "Share of cost by bath: what the shop bears is left out",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 14, help: "As above." }, (r) => firstOrMore(r, "loads", "bath", bathLines)),
    computed({ id: "basis", label: "Shared by", type: "text", width: 19, help: "One basis for all claims of a bath." },
      (r) => blankIf([`${r.here("how")}<>${quoted(ways.shared)}`], r.named("shareBasis"))),
    computed({ id: "claims", label: "Claims in it", type: "whole number", format: "0", width: 11, help: "How many claims were in the bath." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `COUNTIFS(${where([[r.all("loads", "bath"), r.here("bath")], [r.all("loads", "firstOfClaim"), "1"]])})`)),
    fromShares("units", "unitsUsed", { label: "Its units", type: "number", format: "General", width: 11, help: "Counted by the basis." }),
    computed({ id: "allUnits", label: "All units", type: "number", format: "General", width: 11, help: "Of all claims in the bath." },
      (r) => blankIf([`${r.here("how")}<>${quoted(ways.shared)}`], `SUM(${r.all("shares", "unitsUsed")})`)),
    fromShares("part", "weight", { label: "Part", type: "share", format: "0.0%", width: 10, help: "Its units of all units." }),
    computed({ id: "pool", label: "To share out", type: "money", format: "#,##0.00", width: 11, help: "Additions and cost lines of the bath on the account of claims." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], claimsCosts(r))),
    computed({ id: "how", label: "How", type: "text", width: 25, help: "How the cost comes to this claim." },
      (r) => blankIf([`${r.here("sourceRow")}=""`],
        `IF(${r.here("bath")}=${r.named("shareBath")},IF(${r.here("shareRow")}="",${quoted(ways.missing)},${quoted(ways.shared)}),IF(${r.here("claims")}=1,${quoted(ways.alone)},${quoted(ways.open)}))`)),
    computed({ id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "To the cent." },
      (r) => blankIf([`${r.here("sourceRow")}=""`],
        `IF(${r.here("how")}=${quoted(ways.shared)},${at(r, "shares", "share", r.here("shareRow"))},IF(${r.here("how")}=${quoted(ways.alone)},${r.here("pool")},""))`)),
    ...listed("loads", "statementShares", bathLines),
    helper({ id: "shareRow", label: "Share row", type: "whole number", format: "0", width: 8, help: "Position of the claim in Shares." },
      (r) => positionOf(r, r.named("statementClaim"), "shares", "claim")),
  ],
  signals: [
    { column: "how", when: { startsWith: "choose" }, look: "watch" },
    { column: "how", when: { is: ways.missing }, look: "act" },
  ],
};
