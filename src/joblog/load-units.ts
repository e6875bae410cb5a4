import { computed, helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, positionOf, quoted, where } from "./formulas.ts";
import { loadStatement } from "./statement-keys.ts";
import { yesNo } from "./words.ts";

const [yes] = yesNo;

/** What a load counts for by each of the three bases of a share. */
export const loadUnits: readonly ComputedColumn[] = [
  computed({ id: "counted", label: "Baskets counted", type: "number", format: "General", width: 9, help: "Baskets that a share counts: none for a rework." },
    (r) => blankIf([`NOT(ISNUMBER(${r.here("baskets")}))`], `IF(${r.here("rework")}=${quoted(yes)},0,${r.here("baskets")})`)),
  computed({ id: "weighted", label: "Soil-weighted", type: "number", format: "General", width: 9, help: "Baskets counted, times the weight of the soil from the Shop sheet." },
    (r) => blankIf([`${r.here("counted")}=""`, `${r.here("soil")}=""`],
      `${r.here("counted")}*IF(${r.here("soil")}="light",${r.named("weightLight")},IF(${r.here("soil")}="medium",${r.named("weightMedium")},${r.named("weightHeavy")}))`)),
  computed({ id: "basketMinutes", label: "Basket-minutes", type: "number", format: "General", width: 9, help: "Baskets counted, times the minutes in the bath." },
    (r) => blankIf([`${r.here("counted")}=""`, `NOT(ISNUMBER(${r.here("minutes")}))`], `${r.here("counted")}*${r.here("minutes")}`)),
];

/** What a row leaves open, in words. */
export const loadCheck: ComputedColumn =
  computed({ id: "check", label: "Check", type: "text", width: 22, help: "What is missing or does not fit; blank where nothing is." },
    (r) => {
      const opened = at(r, "baths", "opened", r.here("bathRow"));
      const closed = at(r, "baths", "closed", r.here("bathRow"));
      const outside = `IF(NOT(ISNUMBER(${r.here("when")})),"missing: when",IF(AND(ISNUMBER(${opened}),${r.here("when")}<${opened}),"bath not yet open then",IF(AND(ISNUMBER(${closed}),${r.here("when")}>${closed}),"bath closed by then",`;
      const missing = `IF(NOT(ISNUMBER(${r.here("baskets")})),"missing: baskets",IF(${r.here("soil")}="","missing: soil",IF(NOT(ISNUMBER(${r.here("minutes")})),"missing: minutes",IF(${r.here("rework")}=${quoted(yes)},"rework: not billed twice",""))))`;
      return blankIf([`AND(${r.here("id")}="",${r.here("bath")}="",${r.here("claim")}="")`],
        `IF(${r.here("claimRow")}="","claim missing: cost not shared",IF(${r.here("bathRow")}="","bath missing",${outside}${missing})))))`);
    });

/** Positions, and who came into a bath in what order. */
export const loadHelpers: readonly ComputedColumn[] = [
  helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
    (r) => positionOf(r, r.here("bath"), "baths", "bath")),
  helper({ id: "claimRow", label: "Claim row", type: "whole number", format: "0", width: 8, help: "Position in Claims." },
    (r) => positionOf(r, r.here("claim"), "claims", "claim")),
  // Loads entered at the same minute still need an order: a row's position is far below a second.
  helper({ id: "order", label: "Order", type: "number", format: "0.00000000", width: 16, help: "Time of the load with its row as the last digits, so that no two are the same." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `${r.here("claimRow")}=""`, `NOT(ISNUMBER(${r.here("when")}))`],
      `${r.here("when")}+(ROW(${r.here("when")})-ROW(${r.header("loads", "when")}))/100000000`)),
  helper({ id: "firstOfClaim", label: "First of claim", type: "whole number", format: "0", width: 8, help: "1 where it is the claim's first load in this bath." },
    (r) => blankIf([`${r.here("order")}=""`],
      `IF(COUNTIFS(${where([
        [r.all("loads", "bath"), r.here("bath")],
        [r.all("loads", "claim"), r.here("claim")],
        [r.all("loads", "order"), `"<"&${r.here("order")}`],
      ])})=0,1,0)`)),
  helper({ id: "entry", label: "Claim came in as", type: "whole number", format: "0", width: 9, help: "On a claim's first load in a bath: 1 for the first claim in it, 2 for the second." },
    (r) => blankIf([`${r.here("firstOfClaim")}<>1`],
      `COUNTIFS(${where([
        [r.all("loads", "bath"), r.here("bath")],
        [r.all("loads", "firstOfClaim"), "1"],
        [r.all("loads", "order"), `"<"&${r.here("order")}`],
      ])})+1`)),
  helper({ id: "entryKey", label: "Bath and order", type: "text", width: 16, help: "Bath and place in its order of claims, by which Costs finds them." },
    (r) => blankIf([`${r.here("entry")}=""`], `${r.here("bath")}&"|"&${r.here("entry")}`)),
  loadStatement,
];
