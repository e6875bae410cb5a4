import { computed } from "./columns.ts";
import type { References, TableDefinition } from "./definition.ts";
import { at, blankIf, quoted, upTo, where } from "./formulas.ts";

function itsLoads(r: References): string {
  return where([[r.all("loads", "bath"), r.named("shareBath")], [r.all("loads", "claim"), r.here("claim")]]);
}

/** Who shared a bath, in what order and what was done between, so that a later complaint can be answered. */
export const bathClaims: TableDefinition = {
  id: "bathClaims",
  name: "BathClaims",
  caption: "Claims in this bath, in the order they came in",
  emptyRows: 8,
  fixedRows: true,
  columns: [
    computed({ id: "claim", label: "Claim", type: "text", width: 13, help: "From the loads of the bath to share out." },
      (r) => {
        const row = `MATCH(${r.named("shareBath")}&"|"&(ROW()-ROW(${r.header("bathClaims", "claim")})),${r.all("loads", "entryKey")},0)`;
        return blankIf([`${r.named("shareBath")}=""`], `IF(ISNA(${row}),"",${at(r, "loads", "claim", row)}&"")`);
      }),
    computed({ id: "firstLoad", label: "First load", type: "date and time", width: 16, help: "When it first went in." },
      (r) => blankIf([`${r.here("claim")}=""`], `MINIFS(${r.all("loads", "when")},${itsLoads(r)})`)),
    computed({ id: "lastLoad", label: "Last load", type: "date and time", width: 16, help: "When it last went in." },
      (r) => blankIf([`${r.here("claim")}=""`], `MAXIFS(${r.all("loads", "when")},${itsLoads(r)})`)),
    computed({ id: "loads", label: "Loads", type: "whole number", format: "0", width: 8, help: "Its loads in this bath, rework among them." },
      (r) => blankIf([`${r.here("claim")}=""`], `COUNTIFS(${itsLoads(r)})`)),
    computed({ id: "separation", label: "Skimmed or filtered before it", type: "date and time", width: 16, help: "Last time before its first load, from Care; blank if never." },
      (r) => {
        const last = (kind: string): string => `MAXIFS(${r.all("care", "when")},${where([
          [r.all("care", "bath"), r.named("shareBath")],
          [r.all("care", "kind"), quoted(kind)],
          [r.all("care", "when"), upTo(r.here("firstLoad"))],
        ])})`;
        const latest = `MAX(${last("skim")},${last("filter")})`;
        return blankIf([`${r.here("claim")}=""`], `IF(${latest}=0,"",${latest})`);
      }),
  ],
};
