import { blankIf } from "../../formula/choices.ts";
import { isBlank } from "../../formula/conditions.ts";
import { above, countWhere } from "../../formula/criteria.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { cellAtOrBlank } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { costStanding } from "../../model/words.ts";
import { bathLines } from "./statement-baths.ts";
import { firstOrMore, listed } from "./statement-keys.ts";

type Rest = Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">;

const { computed, helper } = columnsOf<"statementShares">();

function fromShares(id: string, column: ColumnId<"shares">, rest: Rest): ComputedColumn {
  return computed({ id, ...rest }, ({ sourceRow }, { shares }) => cellAtOrBlank(shares[column], sourceRow));
}

/** Its share of the cost of every bath it was in. */
export const statementShares: TableDefinition = {
  id: "statementShares",
  name: "StatementShares",
  caption: "Share of cost by bath: what the shop pays is left out",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    computed({ id: "bath", label: "Bath", type: "text", width: 13, help: "As above." }, (line, { shares }) =>
      firstOrMore(line, shares, shares.bath, bathLines),
    ),
    fromShares("basis", "basis", {
      label: "Shared by",
      type: "text",
      width: 18,
      help: "One basis for all claims of a bath.",
    }),
    computed(
      {
        id: "claims",
        label: "Claims in it",
        type: "whole number",
        format: "0",
        width: 11,
        help: "How many claims share the bath.",
      },
      ({ bath, sourceRow }, { shares }) =>
        blankIf([isBlank(sourceRow)], countWhere(shares, { bath, unitsUsed: above(0) })),
    ),
    fromShares("units", "unitsUsed", {
      label: "Its units",
      type: "number",
      format: "General",
      width: 11,
      help: "Counted by the basis.",
    }),
    fromShares("allUnits", "allUnits", {
      label: "All units",
      type: "number",
      format: "General",
      width: 11,
      help: "Of all claims in the bath.",
    }),
    fromShares("part", "weight", {
      label: "Part",
      type: "share",
      format: "0.0%",
      width: 10,
      help: "Its units divided by all units.",
    }),
    fromShares("pool", "pool", {
      label: "To share out",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "Additions and cost lines of the bath that its claims share.",
    }),
    computed(
      {
        id: "how",
        label: "Standing",
        type: "text",
        width: 20,
        help: "Whether the bath's cost is placed to the cent, or why it is provisional.",
      },
      ({ bathRow }, { baths }) => cellAtOrBlank(baths.costState, bathRow),
    ),
    fromShares("share", "share", {
      label: "Share",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "To the cent.",
    }),
    ...listed("shares", "statementShares", bathLines),
    helper(
      { id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
      ({ sourceRow }, { shares }) => cellAtOrBlank(shares.bathRow, sourceRow),
    ),
  ],
  signals: [{ column: "how", when: { startsWith: costStanding.provisional }, look: "act" }],
};

const aloneLines = 4;

const alone = columnsOf<"statementAlone">();

function fromLine(id: ColumnId<"costLines"> & ColumnId<"statementAlone">, rest: Rest): ComputedColumn {
  return alone.computed({ id, ...rest }, ({ sourceRow }, { costLines }) => cellAtOrBlank(costLines[id], sourceRow));
}

/** What it pays without any other claim. */
export const statementAlone: TableDefinition = {
  id: "statementAlone",
  name: "StatementAlone",
  caption: "Costs of this claim alone",
  emptyRows: aloneLines,
  fixedRows: true,
  columns: [
    alone.computed(
      { id: "id", label: "Cost line", type: "text", width: 13, help: "As on Costs." },
      (line, { costLines }) => firstOrMore(line, costLines, costLines.id, aloneLines),
    ),
    fromLine("what", { label: "What", type: "text", width: 18, help: "What it was for." }),
    fromLine("date", { label: "Date", type: "date", format: "yyyy-mm-dd", width: 11, help: "Of the document." }),
    fromLine("document", { label: "Document", type: "text", width: 11, help: "What proves it." }),
    fromLine("bath", { label: "Bath", type: "text", width: 11, help: "Blank where it belongs to none." }),
    alone.computed(
      { id: "part", label: "Part", type: "share", format: "0.0%", width: 10, help: "All of the line." },
      ({ sourceRow }) => blankIf([isBlank(sourceRow)], 1),
    ),
    fromLine("amount", {
      label: "Whole line",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "A credit is negative.",
    }),
    fromLine("check", {
      label: "Standing",
      type: "text",
      width: 20,
      help: "What is open on the line; blank if nothing.",
    }),
    alone.computed(
      { id: "share", label: "Share", type: "money", format: "#,##0.00", width: 11, help: "What the claim pays." },
      ({ sourceRow }, { costLines }) => cellAtOrBlank(costLines.alone, sourceRow),
    ),
    ...listed("costLines", "statementAlone", aloneLines),
  ],
};
