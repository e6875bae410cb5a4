import { helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { before, blankIf, from, never, quoted, upTo, where } from "./formulas.ts";

/**
 * Rounds of topping up. A round begins with a check that asks for a top-up where the reading before it
 * did not, and lasts until the next such check: a bath that was added to twice has had one round.
 */
export const readingRounds: readonly ComputedColumn[] = [
  helper({ id: "readBefore", label: "Read before", type: "date and time", width: 16, help: "Where a top-up is due: the bath's reading before this one; 0 if none." },
    (r) => blankIf([`${r.here("verdict")}<>"top up"`, `${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("when")}))`],
      `MAXIFS(${r.all("readings", "when")},${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "purpose"), quoted("<>rinse")],
        [r.all("readings", "ph"), quoted(">0")],
        [r.all("readings", "when"), before(r.here("when"))],
      ])})`)),
  helper({ id: "roundStart", label: "Round begins", type: "whole number", format: "0", width: 8, help: "1 where a round of topping up begins." },
    (r) => {
      const askedAlready = `COUNTIFS(${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "when"), from(r.here("readBefore"))],
        [r.all("readings", "when"), upTo(r.here("readBefore"))],
        [r.all("readings", "verdict"), quoted("top up")],
      ])})`;
      return blankIf([`${r.here("purpose")}<>"check"`, `${r.here("verdict")}<>"top up"`, `${r.here("readBefore")}=""`], `IF(${askedAlready}>0,0,1)`);
    }),
  helper({ id: "roundAmount", label: "Round took", type: "number", format: "0.000", width: 9, help: "Top-up concentrate from here to the next round; 0 where none went in." },
    (r) => {
      const next = `MINIFS(${r.all("readings", "when")},${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "roundStart"), "1"],
        [r.all("readings", "when"), `">"&${r.here("when")}`],
      ])})`;
      const until = `IF(${next}=0,${never},${next})`;
      return blankIf([`${r.here("roundStart")}<>1`],
        `SUMIFS(${r.all("additions", "amount")},${where([
          [r.all("additions", "bath"), r.here("bath")],
          [r.all("additions", "kind"), quoted("concentrate")],
          [r.all("additions", "purpose"), quoted("top-up")],
          [r.all("additions", "when"), from(r.here("when"))],
          [r.all("additions", "when"), before(until)],
        ])})`);
    }),
];
