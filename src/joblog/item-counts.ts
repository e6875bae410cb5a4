import { computed, keyInput, numberInput } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { blankIf, quoted, where } from "./formulas.ts";
import { between } from "./units-of.ts";
import { itemStandings } from "./words.ts";

function pieces(r: References, standing: string): string {
  return `SUMIFS(${r.all("items", "quantity")},${where([[r.all("items", "claim"), r.here("claim")], [r.all("items", "standing"), quoted(standing)]])})`;
}

function count(id: string, label: string, width: number, help: string, standings: readonly string[]): ComputedColumn {
  return computed({ id, label, type: "whole number", format: "0", width, help },
    (r) => blankIf([`${r.here("claim")}=""`], standings.map((standing) => pieces(r, standing)).join("+")));
}

/** Lines of a claim whose pieces are missing or no number: no count has them. */
function withoutPieces(r: References, claim: string): string {
  const lines = `${r.all("items", "claim")},${claim}`;
  return `(COUNTIFS(${lines})-COUNTIFS(${lines},${r.all("items", "quantity")},">=0"))`;
}

const accounted = ["restored", "handCleaned", "notRestorable", "returned", "pending"] as const;

/** The balance that an adjuster checks first: pieces in against what became of them. */
export const itemCounts: TableDefinition = {
  id: "itemCounts",
  name: "ItemCounts",
  caption: "Balance of pieces by claim",
  emptyRows: 6,
  columns: [
    keyInput({ id: "claim", label: "Claim", width: 12, required: true, from: ["claims", "claim"], help: "Every claim with items, once." }),
    { ...numberInput({ id: "received", label: "Counted in", limits: between(0, 1_000_000), format: "0", width: 11, help: "Pieces counted at the door, if they were: the list below is held against it." }), type: "whole number" },
    computed({ id: "pieces", label: "Pieces listed", type: "whole number", format: "0", width: 11, help: "All pieces of the claim in the list below." },
      (r) => blankIf([`${r.here("claim")}=""`], `SUMIFS(${r.all("items", "quantity")},${r.all("items", "claim")},${r.here("claim")})`)),
    computed({ id: "difference", label: "Difference", type: "whole number", format: "0", width: 10, help: "Counted in, or else listed, less what is accounted for; must be 0." },
      (r) => blankIf([`${r.here("claim")}=""`], `IF(ISNUMBER(${r.here("received")}),${r.here("received")},${r.here("pieces")})-(${accounted.map((id) => r.here(id)).join("+")})`)),
    computed({ id: "balance", label: "Balance", type: "text", width: 26, help: "The difference in words." },
      (r) => blankIf([`${r.here("claim")}=""`],
        `IF(${withoutPieces(r, r.here("claim"))}>0,"lines without pieces: "&${withoutPieces(r, r.here("claim"))},IF(${r.here("difference")}=0,IF(${r.here("pending")}=0,"balances, all accounted for","balances, some pending"),IF(${r.here("difference")}>0,${r.here("difference")}&" not accounted for",(-${r.here("difference")})&" more than came in")))`)),
    count("restored", "Restored", 16, "By bath.", [itemStandings.restored]),
    count("handCleaned", "Hand cleaned", 14, "By hand or by a specialist.", [itemStandings.handCleaned, itemStandings.specialist]),
    count("notRestorable", "Not restorable", 11, "With or without a reason code.", [itemStandings.notRestorable, itemStandings.reasonMissing]),
    count("returned", "Returned uncleaned", 11, "Returned as they came.", [itemStandings.returned]),
    count("pending", "Pending", 12, "No outcome yet.", [itemStandings.pending]),
  ],
  signals: [
    { column: "difference", when: { isNot: 0 }, look: "act" },
    { column: "balance", when: { startsWith: "balances" }, look: "good" },
    { column: "balance", when: { startsWith: "lines" }, look: "act" },
  ],
};
