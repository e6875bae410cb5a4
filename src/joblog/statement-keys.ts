import { helper } from "./columns.ts";
import type { ColumnDefinition, ComputedColumn, References } from "./definition.ts";
import type { TableId } from "./formula/log-types.ts";
import { at, blankIf, quoted, where } from "./formulas.ts";
import { itemStandings } from "./words.ts";

const common = { id: "statementOrder", label: "In the statement", type: "number", format: "0.00000000", width: 16 } as const;

/** A claim's first load in each bath is where the statement finds its baths. */
export const loadStatement: ComputedColumn =
  helper({ ...common, help: "Order of the bath in the claim statement; blank on every load but the claim's first in a bath." },
    (r) => blankIf([`${r.here("firstOfClaim")}<>1`, `${r.here("claim")}<>${r.named("statementClaim")}`], r.here("order")));

/** Later concentrate of the days on which the claim's loads were in that bath. */
export const additionStatement: ComputedColumn =
  helper({ ...common, help: "Order of the top-up in the claim statement; blank on what does not belong there." },
    (r) => {
      const inItsDays = `COUNTIFS(${where([
        [r.all("statementUse", "bath"), r.here("bath")],
        [r.all("statementUse", "from"), `"<="&${r.here("when")}`],
        [r.all("statementUse", "until"), `">"&${r.here("when")}`],
      ])})`;
      return blankIf([`${r.here("kind")}<>"concentrate"`, `${r.here("purpose")}="opening"`, `NOT(ISNUMBER(${r.here("when")}))`],
        `IF(${inItsDays}=0,"",${r.here("when")}+(ROW(${r.here("when")})-ROW(${r.header("additions", "when")}))/100000000)`);
    });

/** The claim's pieces that are not restorable. */
export const itemStatement: ComputedColumn =
  helper({ ...common, format: "0", help: "Row of a piece not restorable of the statement's claim; blank on all others." },
    (r) => blankIf([`${r.here("claim")}=""`, `${r.here("claim")}<>${r.named("statementClaim")}`, `AND(${r.here("standing")}<>${quoted(itemStandings.notRestorable)},${r.here("standing")}<>${quoted(itemStandings.reasonMissing)})`],
      `ROW(${r.here("id")})-ROW(${r.header("items", "id")})`));

/** Where the k-th of the marked rows stands; a list that is too long gives its last line away to say so. */
export function listed(from: TableId, into: TableId, lines: number): readonly ColumnDefinition[] {
  const keys = (r: References): string => r.all(from, "statementOrder");
  return [
    helper({ id: "line", label: "Line", type: "whole number", format: "0", width: 6, help: "Running number of the line." },
      (r) => blankIf([`${r.named("statementClaim")}=""`], `ROW()-ROW(${r.header(into, "line")})`)),
    helper({ id: "sourceRow", label: "Row in the log", type: "whole number", format: "0", width: 9, help: "Position of what the line shows." },
      (r) => blankIf([`${r.here("line")}=""`, `${r.here("line")}>COUNT(${keys(r)})`, `AND(${r.here("line")}=${String(lines)},COUNT(${keys(r)})>${String(lines)})`],
        `MATCH(SMALL(${keys(r)},${r.here("line")}),${keys(r)},0)`)),
  ];
}

/** The first cell of a line: what it is about, or how much more there is. */
export function firstOrMore(r: References, from: TableId, column: string, lines: number): string {
  const count = `COUNT(${r.all(from, "statementOrder")})`;
  return `IF(${r.here("sourceRow")}<>"",${at(r, from, column, r.here("sourceRow"))}&"",IF(AND(${r.here("line")}=${String(lines)},${count}>${String(lines)}),"… "&(${count}-${String(lines - 1)})&" more in the log",""))`;
}
