import { computed, keyInput, numberInput } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { blankIf, quoted, upTo, where } from "./formulas.ts";
import { between } from "./units-of.ts";
import { shareBases } from "./words.ts";

const [byBaskets, bySoil, byMinutes] = shareBases;

/** Conditions that pick the claim's loads of the bath to share out. */
function itsLoads(r: References): string {
  return where([[r.all("loads", "bath"), r.named("shareBath")], [r.all("loads", "claim"), r.here("claim")]]);
}

function units(id: string, label: string, of: string, help: string): ComputedColumn {
  return computed({ id, label, type: "number", format: "General", width: 9, help },
    (r) => blankIf([`${r.here("claim")}=""`, `${r.named("shareBath")}=""`], `SUMIFS(${r.all("loads", of)},${itsLoads(r)})`));
}

/** One of three by the basis chosen, blank where none is. */
function byBasis(r: References, baskets: string, soil: string, minutes: string): string {
  const is = (basis: string): string => `${r.named("shareBasis")}=${quoted(basis)}`;
  return `IF(${is(byBaskets)},${baskets},IF(${is(bySoil)},${soil},IF(${is(byMinutes)},${minutes},"")))`;
}

export const shares: TableDefinition = {
  id: "shares",
  name: "Shares",
  caption: "Each claim's share, and who was in the bath in what order",
  emptyRows: 3,
  columns: [
    keyInput({ id: "claim", label: "Claim", width: 14, required: true, from: ["claims", "claim"], help: "Every claim that was in the bath, once." }),
    numberInput({ id: "units", label: "Units", limits: between(0, 1_000_000), format: "General", width: 9, help: "Only where the loads were not logged: counted by the basis chosen above, rework left out. Blank: from Loads." }),
    computed({ id: "unitsUsed", label: "Units used", type: "number", format: "General", width: 9, help: "Typed units, or else those of the basis chosen." },
      (r) => blankIf([`${r.here("claim")}=""`], `IF(${r.here("units")}<>"",IF(ISNUMBER(${r.here("units")}),${r.here("units")},""),${byBasis(r, r.here("baskets"), r.here("weightedBaskets"), r.here("basketMinutes"))})`)),
    computed({ id: "weight", label: "Part of all", type: "share", format: "0.0%", width: 9, help: "This claim's units of all units." },
      (r) => blankIf([`NOT(ISNUMBER(${r.here("unitsUsed")}))`, `SUM(${r.all("shares", "unitsUsed")})=0`], `${r.here("unitsUsed")}/SUM(${r.all("shares", "unitsUsed")})`)),
    computed({ id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "To the cent; the shares add up to the total exactly." },
      (r) => blankIf([`${r.here("claim")}=""`, `NOT(ISNUMBER(${r.here("unitsUsed")}))`, `NOT(ISNUMBER(${r.named("poolTotal")}))`, `SUM(${r.all("shares", "unitsUsed")})=0`],
        `INDEX(BATH.SHARE(${r.named("poolTotal")},${r.all("shares", "unitsUsed")}),ROW(${r.here("claim")})-ROW(${r.header("shares", "claim")}),1)`)),
    computed({ id: "loads", label: "Loads counted", type: "whole number", format: "0", width: 9, help: "Its loads in this bath whose units are known, rework among them." },
      (r) => {
        const known = (of: string): string => `COUNTIFS(${itsLoads(r)},${r.all("loads", of)},">=0")`;
        return blankIf([`${r.here("claim")}=""`, `${r.named("shareBath")}=""`], byBasis(r, known("counted"), known("weighted"), known("basketMinutes")));
      }),
    units("baskets", "Baskets", "counted", "Of the claim's loads in this bath; rework is left out."),
    units("weightedBaskets", "Soil-weighted", "weighted", "Baskets times the weight of their soil."),
    units("basketMinutes", "Basket-minutes", "basketMinutes", "Baskets times their minutes in the bath."),
    computed({ id: "entered", label: "Order in the bath", type: "whole number", format: "0", width: 8, help: "1 for the first claim in this bath, 2 for the second." },
      (r) => blankIf([`${r.here("firstLoad")}=""`], `SUMIFS(${r.all("loads", "entry")},${itsLoads(r)})`)),
    computed({ id: "firstLoad", label: "First load", type: "date and time", width: 16, help: "When it first went into this bath." },
      (r) => blankIf([`${r.here("claim")}=""`, `${r.named("shareBath")}=""`], `IF(COUNTIFS(${itsLoads(r)})=0,"",MINIFS(${r.all("loads", "when")},${itsLoads(r)}))`)),
    computed({ id: "lastLoad", label: "Last load", type: "date and time", width: 16, help: "When it last went into this bath." },
      (r) => blankIf([`${r.here("firstLoad")}=""`], `MAXIFS(${r.all("loads", "when")},${itsLoads(r)})`)),
    computed({ id: "separation", label: "Skimmed or filtered before", type: "date and time", width: 16, help: "Last time before its first load, from Care; blank if never." },
      (r) => {
        const last = (kind: string): string => `MAXIFS(${r.all("care", "when")},${where([
          [r.all("care", "bath"), r.named("shareBath")],
          [r.all("care", "kind"), quoted(kind)],
          [r.all("care", "when"), upTo(r.here("firstLoad"))],
        ])})`;
        const latest = `MAX(${last("skim")},${last("filter")})`;
        return blankIf([`${r.here("firstLoad")}=""`], `IF(${latest}=0,"",${latest})`);
      }),
    { ...computed({ id: "unitsCheck", label: "Typed units", type: "text", width: 30, help: "Where typed units differ from what the loads say." },
      (r) => {
        const logged = byBasis(r, r.here("baskets"), r.here("weightedBaskets"), r.here("basketMinutes"));
        return blankIf([`${r.here("claim")}=""`, `${r.here("units")}=""`], `IF(NOT(ISNUMBER(${r.here("units")})),"no number",IF(${r.here("units")}=${logged},"as logged","the loads say "&${logged}))`);
      }), unprinted: true },
  ],
  signals: [
    { column: "unitsCheck", when: { startsWith: "the loads" }, look: "watch" },
    { column: "unitsCheck", when: { is: "no number" }, look: "act" },
  ],
};
