import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { at, atOrBlank, blankIf, positionOf, quoted, where } from "./formulas.ts";
import { firstOrMore, listed } from "./statement-keys.ts";
import { volume } from "./units-of.ts";
import { bench } from "./words.ts";

/** A claim rarely passes through more baths than this in a week. */
export const bathLines = 4;

function ofBath(id: string, column: string, rest: Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">): ComputedColumn {
  return computed({ id, ...rest }, (r) => atOrBlank(r, "baths", column, r.here("bathRow")));
}

/** Which baths, with what in them and on what footing. */
export const statementBaths: TableDefinition = {
  id: "statementBaths",
  name: "StatementBaths",
  caption: "Baths that its pieces were in",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 14, help: "In the order in which the claim came into them." }, (r) => firstOrMore(r, "loads", "bath", bathLines)),
    computed({ id: "water", label: "Water", type: "text", width: 19, help: "Water of the fill." },
      (r) => {
        const row = at(r, "baths", "waterRow", r.here("bathRow"));
        return blankIf([`${r.here("bathRow")}=""`], `IF(${row}="","",IF(${at(r, "waters", "name", row)}="",${at(r, "waters", "water", row)},${at(r, "waters", "name", row)})&"")`);
      }),
    ofBath("tank", "tank", { label: "Tank", type: "text", width: 11, help: "Where it stood." }),
    ofBath("strength", "strengthReached", { label: "Strength", type: "text", width: 11, help: "Opening dose in the working volume, one part and N parts of water." }),
    ofBath("baseline", "baseline", { label: "Baseline pH", type: "number", format: "0.00", width: 13, help: "Median of at least three readings after accepted bench tests." }),
    ofBath("trigger", "trigger", { label: "Trigger pH", type: "number", format: "0.00", width: 10, help: "At or under it a top-up was due." }),
    ofBath("opened", "opened", { label: "Opened", type: "date", format: "yyyy-mm-dd", width: 11, help: "Day of the fill." }),
    computed({ id: "benchTests", label: "Bench tests", type: "text", width: 25, help: "No baseline stands without accepted tests; how the latest ones stand since the last concentrate." },
      (r) => {
        const now = at(r, "baths", "benchState", r.here("bathRow"));
        return blankIf([`${r.here("bathRow")}=""`], `IF(AND(${r.here("baseline")}<>"",${now}<>${quoted(bench.accepted)}),"accepted for the baseline; now: ","")&${now}`);
      }),
    ofBath("closed", "closed", { label: "Closed", type: "date", format: "yyyy-mm-dd", width: 11, help: "Day of the change-out; blank while in use." }),
    ...listed("loads", "statementBaths", bathLines),
    helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], positionOf(r, at(r, "loads", "bath", r.here("sourceRow")), "baths", "bath"))),
  ],
};

const judged = ["hold", "near", "top up", "re-read"] as const;

function readingsThen(r: References): string {
  return where([
    [r.all("readings", "bath"), r.here("bath")],
    [r.all("readings", "when"), `">="&${r.here("from")}`],
    [r.all("readings", "when"), `"<"&${r.here("until")}`],
  ]);
}

/** What was read and added on the days that its loads were in. */
export const statementUse: TableDefinition = {
  id: "statementUse",
  name: "StatementUse",
  caption: "Loads, readings and top-ups on the days from its first to its last load in the bath",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 14, help: "As above." }, (r) => firstOrMore(r, "loads", "bath", bathLines)),
    computed({ id: "shared", label: "Shared with others", type: "text", width: 19, help: "Its place in the order of the claims in this bath." },
      (r) => blankIf([`${r.here("sourceRow")}=""`],
        `IF(${r.here("claims")}=1,"alone in it","claim "&${at(r, "loads", "entry", r.here("sourceRow"))}&" of "&${r.here("claims")}&" in it")`)),
    computed({ id: "first", label: "First load", type: "date", format: "yyyy-mm-dd", width: 11, help: "Day of its first load in it." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], r.here("from"))),
    computed({ id: "last", label: "Last load", type: "date", format: "yyyy-mm-dd", width: 11, help: "Day of its last load in it." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `${r.here("until")}-1`)),
    computed({ id: "loads", label: "Loads", type: "whole number", format: "0", width: 11, help: "Its loads in this bath, rework among them." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `COUNTIFS(${where([[r.all("loads", "bath"), r.here("bath")], [r.all("loads", "claim"), r.named("statementClaim")]])})`)),
    computed({ id: "readings", label: "pH read, times", type: "whole number", format: "0", width: 10, help: "Readings of the bath on these days, those of the rinse left out." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `COUNTIFS(${readingsThen(r)},${r.all("readings", "purpose")},"<>rinse",${r.all("readings", "ph")},">0")`)),
    computed({ id: "lowest", label: "Lowest pH", type: "number", format: "0.00", width: 11, help: "At the baseline's temperature, the meter's drift taken out." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `IF(COUNTIFS(${readingsThen(r)},${r.all("readings", "phAtBaseline")},">0")=0,"",MINIFS(${r.all("readings", "phAtBaseline")},${readingsThen(r)}))`)),
    computed({ id: "verdicts", label: "Verdicts", type: "text", width: 25, help: "What the checks among them said." },
      (r) => {
        const part = (word: string): string => {
          const times = `COUNTIFS(${readingsThen(r)},${r.all("readings", "verdict")},"${word}*")`;
          return `IF(${times}=0,"",", ${word} "&${times})`;
        };
        return blankIf([`${r.here("sourceRow")}=""`], `MID(${judged.map(part).join("&")},3,99)`);
      }),
    computed({ id: "toppedUp", label: "Topped up", type: "number", unit: volume, format: "0.000", width: 11, help: "Concentrate added to the bath on these days after its opening, for whoever's account." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `SUMIFS(${r.all("additions", "amount")},${where([
        [r.all("additions", "bath"), r.here("bath")],
        [r.all("additions", "kind"), quoted("concentrate")],
        [r.all("additions", "purpose"), quoted("<>opening")],
        [r.all("additions", "when"), `">="&${r.here("from")}`],
        [r.all("additions", "when"), `"<"&${r.here("until")}`],
      ])})`)),
    ...listed("loads", "statementUse", bathLines),
    helper({ id: "claims", label: "Claims in it", type: "whole number", format: "0", width: 8, help: "How many claims were in the bath." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `COUNTIFS(${where([[r.all("loads", "bath"), r.here("bath")], [r.all("loads", "firstOfClaim"), "1"]])})`)),
    helper({ id: "from", label: "From", type: "date", width: 11, help: "Day of the claim's first load." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `INT(${at(r, "loads", "when", r.here("sourceRow"))})`)),
    helper({ id: "until", label: "Until", type: "date", width: 11, help: "Day after the claim's last load." },
      (r) => blankIf([`${r.here("sourceRow")}=""`], `INT(MAXIFS(${r.all("loads", "when")},${where([[r.all("loads", "bath"), r.here("bath")], [r.all("loads", "claim"), r.named("statementClaim")]])}))+1`)),
  ],
};
