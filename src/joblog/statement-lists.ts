import { computed } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { formulaText } from "./formula/formula-text.ts";
import { at, blankIf, quoted, where } from "./formulas.ts";
import { withoutPieces } from "./items-without-pieces.ts";
import { firstOrMore, listed } from "./statement-keys.ts";
import { volume } from "./units-of.ts";
import { itemStandings } from "./words.ts";

type Rest = Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">;

function copied(from: "additions" | "items", column: string, rest: Rest, id = column): ComputedColumn {
  return computed({ id, ...rest }, (r) => {
    const cell = at(r, from, column, r.here("sourceRow"));
    return blankIf([`${r.here("sourceRow")}=""`], `IF(${cell}="","",${cell})`);
  });
}

const topUpLines = 5;

export const statementTopUps: TableDefinition = {
  id: "statementTopUps",
  name: "StatementTopUps",
  caption: "Top-ups on these days",
  emptyRows: topUpLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 14, help: "What it went into." }, (r) => firstOrMore(r, "additions", "bath", topUpLines)),
    copied("additions", "when", { label: "When", type: "date and time", width: 19, help: "Date and time." }),
    copied("additions", "purpose", { label: "Purpose", type: "text", width: 11, help: "Top-up, make-up or corrective." }),
    { ...copied("additions", "amount", { label: "Amount", type: "number", format: "0.000", width: 11, help: "Concentrate that went in." }), unit: volume },
    copied("additions", "phBefore", { label: "pH before", type: "number", format: "0.00", width: 11, help: "Before it." }),
    copied("additions", "phAfter", { label: "pH after", type: "number", format: "0.00", width: 10, help: "After mixing." }),
    copied("additions", "recovery", { label: "Recovery", type: "text", width: 11, help: "Whether the bath came back to its baseline." }),
    copied("additions", "note", { label: "Note", type: "text", width: 25, help: "As it stands in the log." }),
    copied("additions", "account", { label: "Account", type: "text", width: 11, help: "The shop's own mistakes are on no claim." }),
    ...listed("additions", "statementTopUps", topUpLines),
  ],
};

function pieces(r: References, ...standings: readonly string[]): string {
  const sum = (standing: string): string => `SUMIFS(${r.all("items", "quantity")},${where([[r.all("items", "claim"), r.named("statementClaim")], [r.all("items", "standing"), quoted(standing)]])})`;
  return standings.map(sum).join("+");
}

function count(id: string, label: string, width: number, help: string, standings: readonly string[]): ComputedColumn {
  return computed({ id, label, type: "whole number", format: "0", width, help }, (r) => blankIf([`${r.named("statementClaim")}=""`], pieces(r, ...standings)));
}

/** One line: the outcomes must add up to the pieces. */
export const statementCounts: TableDefinition = {
  id: "statementCounts",
  name: "StatementCounts",
  caption: "Pieces by outcome",
  emptyRows: 1,
  fixedRows: true,
  columns: [
    computed({ id: "pieces", label: "Pieces in", type: "whole number", format: "0", width: 14, help: "All pieces of the claim in the log." },
      (r) => blankIf([`${r.named("statementClaim")}=""`], `SUMIFS(${r.all("items", "quantity")},${r.all("items", "claim")},${r.named("statementClaim")})`)),
    computed({ id: "balance", label: "Balance", type: "text", width: 19, help: "Whether the outcomes add up to the pieces in." },
      (r) => blankIf([`${r.named("statementClaim")}=""`],
        `IF(${formulaText(withoutPieces(r.log.items, r.log.named.statementClaim), r)}>0,"lines without pieces",IF(${r.here("pieces")}=${["restored", "handCleaned", "notRestorable", "returned", "pending"].map((id) => r.here(id)).join("+")},"balances","does not balance"))`)),
    count("restored", "Restored", 11, "By bath.", [itemStandings.restored]),
    count("handCleaned", "Hand cleaned", 11, "By hand or by a specialist.", [itemStandings.handCleaned, itemStandings.specialist]),
    count("notRestorable", "Not restorable", 11, "Listed below.", [itemStandings.notRestorable, itemStandings.reasonMissing]),
    count("returned", "Returned uncleaned", 10, "As they came.", [itemStandings.returned]),
    count("pending", "Pending", 11, "No outcome yet.", [itemStandings.pending]),
    computed({ id: "value", label: "Replacement value, not restorable", type: "money", format: "#,##0.00", width: 25, help: "Sum of what was typed for them; what they are worth is not for this log to say." },
      (r) => blankIf([`${r.named("statementClaim")}=""`],
        [itemStandings.notRestorable, itemStandings.reasonMissing].map((standing) => `SUMIFS(${r.all("items", "replacementValue")},${where([[r.all("items", "claim"), r.named("statementClaim")], [r.all("items", "standing"), quoted(standing)]])})`).join("+"))),
    count("reasonMissing", "Without a reason", 11, "Not restorable, but no reason code is given yet.", [itemStandings.reasonMissing]),
  ],
  signals: [
    { column: "balance", when: { is: "balances" }, look: "good" },
    { column: "balance", when: { is: "does not balance" }, look: "act" },
    { column: "balance", when: { startsWith: "lines" }, look: "act" },
    { column: "reasonMissing", when: { isNot: 0 }, look: "act" },
  ],
};

const itemLines = 10;

export const statementItems: TableDefinition = {
  id: "statementItems",
  name: "StatementItems",
  caption: "Not restorable, with reasons",
  emptyRows: itemLines,
  fixedRows: true,
  columns: [
    computed({ id: "id", label: "Item", type: "text", width: 14, help: "As on its tag." }, (r) => firstOrMore(r, "items", "id", itemLines)),
    copied("items", "item", { label: "What", type: "text", width: 19, help: "What it is." }),
    copied("items", "quantity", { label: "Pieces", type: "whole number", width: 11, help: "How many." }),
    copied("items", "room", { label: "Room", type: "text", width: 11, help: "Where it stood." }),
    copied("items", "condition", { label: "Condition", type: "text", width: 11, help: "As it came in." }),
    copied("items", "reason", { label: "Reason", type: "text", width: 10, help: "Code of the reason." }),
    copied("items", "replacementValue", { label: "Value", type: "money", format: "#,##0.00", width: 11, help: "As typed, of the whole line." }),
    copied("items", "reasonText", { label: "What was seen", type: "text", width: 25, help: "The reason in a sentence." }),
    copied("items", "photo", { label: "Photo", type: "text", width: 11, help: "Taken before cleaning." }),
    ...listed("items", "statementItems", itemLines),
  ],
};
