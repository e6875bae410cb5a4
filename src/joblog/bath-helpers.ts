import { baselineAsRead } from "./bath-baseline.ts";
import { bathRoundHelpers } from "./bath-rounds.ts";
import { helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, positionOf, quoted, where } from "./formulas.ts";

/** Positions and times that the formulas of this sheet and of the others look up. */
export const bathHelpers: readonly ComputedColumn[] = [
  helper({ id: "tankRow", label: "Tank row", type: "whole number", format: "0", width: 8, help: "Position in Tanks." },
    (r) => positionOf(r, r.here("tank"), "tanks", "tank")),
  helper({ id: "waterRow", label: "Water row", type: "whole number", format: "0", width: 8, help: "Position in Waters." },
    (r) => positionOf(r, r.here("water"), "waters", "water")),
  helper({ id: "concentrateRow", label: "Concentrate row", type: "whole number", format: "0", width: 11, help: "Position in Concentrates." },
    (r) => positionOf(r, r.here("concentrate"), "concentrates", "concentrate")),
  helper({ id: "builderUsed", label: "Builder used", type: "text", width: 11, help: "The bath's own, or else the concentrate's." },
    (r) => {
      const ofConcentrate = at(r, "concentrates", "builder", r.here("concentrateRow"));
      return blankIf([`${r.here("bath")}=""`],
        `IF(${r.here("builder")}<>"",${r.here("builder")},IF(${r.here("concentrateRow")}="","unknown",IF(${ofConcentrate}="","unknown",${ofConcentrate})))`);
    }),
  helper({ id: "dropUsed", label: "Drop used", type: "number", format: "0.00", width: 8, help: "The bath's own drop allowed, or else the shop's usual one." },
    (r) => blankIf([`${r.here("bath")}=""`], `IF(ISNUMBER(${r.here("dropAllowed")}),${r.here("dropAllowed")},${r.named("usualDrop")})`)),
  baselineAsRead,
  // A bare 0 may be a blank cell to a function, which then reckons with any usual water.
  helper({ id: "alkalinityUsed", label: "Alkalinity used", type: "text", width: 10, help: "Of the water, a tested 0 with its unit." },
    (r) => blankIf([`${r.here("alkalinity")}=""`], `IF(${r.here("alkalinity")}=0,"0 mg/L",${r.here("alkalinity")})`)),
  helper({ id: "lastOpening", label: "Last opening dose", type: "date and time", width: 16, help: "Baseline readings before it do not count." },
    (r) => blankIf([`${r.here("bath")}=""`], `MAXIFS(${r.all("additions", "when")},${where([
      [r.all("additions", "bath"), r.here("bath")],
      [r.all("additions", "kind"), quoted("concentrate")],
      [r.all("additions", "purpose"), quoted("opening")],
    ])})`)),
  helper({ id: "lastConcentrate", label: "Last concentrate", type: "date and time", width: 16, help: "Bench tests before it no longer stand." },
    (r) => blankIf([`${r.here("bath")}=""`], `MAXIFS(${r.all("additions", "when")},${where([
      [r.all("additions", "bath"), r.here("bath")],
      [r.all("additions", "kind"), quoted("concentrate")],
    ])})`)),
  helper({ id: "lastAddition", label: "Last addition", type: "date and time", width: 16, help: "Of concentrate or water." },
    (r) => blankIf([`${r.here("bath")}=""`], `MAXIFS(${r.all("additions", "when")},${r.all("additions", "bath")},${r.here("bath")})`)),
  helper({ id: "lastReadingRow", label: "Last reading row", type: "whole number", format: "0", width: 9, help: "Position in Readings; of readings at the same minute the lowest row." },
    (r) => {
      const ours = where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "purpose"), quoted("<>rinse")],
        [r.all("readings", "ph"), quoted(">0")],
        [r.all("readings", "when"), quoted(">0")],
      ]);
      const latest = `MAXIFS(${r.all("readings", "when")},${ours})`;
      const rows = `SUMPRODUCT(MAX((${r.all("readings", "bath")}=${r.here("bath")})*(${r.all("readings", "purpose")}<>"rinse")*ISNUMBER(${r.all("readings", "ph")})*(${r.all("readings", "when")}=${latest})*(ROW(${r.all("readings", "when")})-ROW(${r.header("readings", "when")}))))`;
      return blankIf([`${r.here("bath")}=""`, `COUNTIFS(${ours})=0`], rows);
    }),
  ...bathRoundHelpers,
];
