import { plus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, equal, isBlank, isOver, unequal } from "../../formula/conditions.ts";
import { atLeast, countWhere, sumWhere } from "../../formula/criteria.ts";
import type { Expression, Value } from "../../formula/expression.ts";
import type { ColumnId, Log, Row } from "../../formula/log-names.ts";
import type { LogTables } from "../../formula/log-types.ts";
import { cellAtOrBlank } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { itemStandings } from "../../model/words.ts";
import { withoutPieces } from "../items/items-without-pieces.ts";
import { firstOrMore, listed } from "./statement-keys.ts";

type Rest = Pick<ComputedColumn, "label" | "type" | "format" | "unit" | "width" | "help">;

const topUpColumns = columnsOf<"statementTopUps">();

function ofTopUp(column: ColumnId<"additions">, rest: Rest): ComputedColumn {
  return topUpColumns.computed({ id: column, ...rest }, ({ sourceRow }, { additions }) =>
    cellAtOrBlank(additions[column], sourceRow),
  );
}

const topUpLines = 5;

export const statementTopUps: TableDefinition = {
  id: "statementTopUps",
  name: "StatementTopUps",
  caption: "Top-ups on these days",
  emptyRows: topUpLines,
  fixedRows: true,
  columns: [
    topUpColumns.computed(
      { id: "bath", label: "Bath", type: "text", width: 13, help: "What it went into." },
      (line, { additions }) => firstOrMore(line, additions, additions.bath, topUpLines),
    ),
    ofTopUp("when", { label: "When", type: "date and time", width: 18, help: "Date and time." }),
    ofTopUp("purpose", { label: "Purpose", type: "text", width: 11, help: "Top-up, make-up or corrective." }),
    ofTopUp("amount", {
      label: "Amount",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 11,
      help: "Concentrate that went in.",
    }),
    ofTopUp("phBefore", { label: "pH before", type: "number", format: "0.00", width: 11, help: "Before it." }),
    ofTopUp("phAfter", { label: "pH after", type: "number", format: "0.00", width: 10, help: "After mixing." }),
    ofTopUp("recovery", {
      label: "Recovery",
      type: "text",
      width: 11,
      help: "Whether the bath came back to its baseline.",
    }),
    ofTopUp("note", { label: "Note", type: "text", width: 20, help: "As it stands in the log." }),
    ofTopUp("account", {
      label: "Account",
      type: "text",
      width: 11,
      help: "The shop's own mistakes are not charged to any claim.",
    }),
    ...listed("additions", "statementTopUps", topUpLines),
  ],
};

type Standing = LogTables["items"]["standing"];

const { computed, helper } = columnsOf<"statementCounts">();

/** What the claim's items of these standings add up to. */
function ofStandings(
  column: ColumnId<"items">,
  [first, ...more]: readonly [Standing, ...Standing[]],
  { items, named }: Log,
): Expression {
  const sum = (standing: Standing): Expression => sumWhere(items, column, { claim: named.statementClaim, standing });
  return plus(sum(first), ...more.map(sum));
}

function count(
  id: string,
  label: string,
  width: number,
  help: string,
  standings: readonly [Standing, ...Standing[]],
): ComputedColumn {
  return computed({ id, label, type: "whole number", format: "0", width, help }, (_row, log) =>
    blankIf([isBlank(log.named.statementClaim)], ofStandings("quantity", standings, log)),
  );
}

/** What the balance is found by. */
function counted(
  id: string,
  label: string,
  help: string,
  number: (row: Row<"statementCounts">, log: Log) => Value,
): ComputedColumn {
  return helper({ id, label, type: "whole number", format: "0", width: 9, help }, (row, log) =>
    blankIf([isBlank(log.named.statementClaim)], number(row, log)),
  );
}

/** One line: the outcomes must add up to the pieces. */
export const statementCounts: TableDefinition = {
  id: "statementCounts",
  name: "StatementCounts",
  caption: "Pieces by outcome",
  emptyRows: 1,
  fixedRows: true,
  columns: [
    computed(
      {
        id: "pieces",
        label: "Pieces in",
        type: "whole number",
        format: "0",
        width: 13,
        help: "All pieces of the claim in the log.",
      },
      (_row, { items, named }) =>
        blankIf([isBlank(named.statementClaim)], sumWhere(items, "quantity", { claim: named.statementClaim })),
    ),
    computed(
      {
        id: "balance",
        label: "Balance",
        type: "text",
        width: 18,
        help: "Whether the outcomes add up to the pieces listed and counted in.",
      },
      ({ accounted, counts, pieces, received, unlisted }, { named }) =>
        blankIf(
          [isBlank(named.statementClaim)],
          when(isOver(unlisted, 0), "lines without pieces")
            .when(any(unequal(pieces, accounted), unequal(received, accounted)), "does not balance")
            .when(isOver(counts, 0), "balances")
            .otherwise("not counted in"),
        ),
    ),
    count("restored", "Restored", 11, "By bath.", [itemStandings.restored]),
    count("handCleaned", "Hand cleaned", 11, "By hand or by a specialist.", [
      itemStandings.handCleaned,
      itemStandings.specialist,
    ]),
    count("notRestorable", "Not restorable", 11, "Listed below.", [
      itemStandings.notRestorable,
      itemStandings.reasonMissing,
    ]),
    count("returned", "Returned uncleaned", 10, "As they came.", [itemStandings.returned]),
    count("pending", "Pending", 11, "No outcome yet.", [itemStandings.pending]),
    computed(
      {
        id: "value",
        label: "Replacement value, not restorable",
        type: "money",
        format: "#,##0.00",
        width: 20,
        help: "Sum of what was typed for them; what they are worth is not for this log to say.",
      },
      (_row, log) =>
        blankIf(
          [isBlank(log.named.statementClaim)],
          ofStandings("replacementValue", [itemStandings.notRestorable, itemStandings.reasonMissing], log),
        ),
    ),
    count("reasonMissing", "Without a reason", 11, "Not restorable, but no reason code is given yet.", [
      itemStandings.reasonMissing,
    ]),
    counted("unlisted", "Lines without pieces", "Lines of the claim that no count has.", (_row, { items, named }) =>
      withoutPieces(items, named.statementClaim),
    ),
    counted("counts", "Counts", "Rows of the claim that say how many pieces came in.", (_row, { itemCounts, named }) =>
      countWhere(itemCounts, { claim: named.statementClaim, received: atLeast(0) }),
    ),
    counted("received", "Counted in", "Pieces that came in; without a count those of the log.", (row, log) =>
      when(equal(row.counts, 0), row.pieces).otherwise(
        sumWhere(log.itemCounts, "received", { claim: log.named.statementClaim }),
      ),
    ),
    counted("accounted", "Accounted for", "All outcomes together.", (row) =>
      plus(row.restored, row.handCleaned, row.notRestorable, row.returned, row.pending),
    ),
  ],
  signals: [
    { column: "balance", when: { is: "balances" }, look: "good" },
    { column: "balance", when: { is: "not counted in" }, look: "watch" },
    { column: "balance", when: { is: "does not balance" }, look: "act" },
    { column: "balance", when: { startsWith: "lines" }, look: "act" },
    { column: "reasonMissing", when: { isNot: 0 }, look: "act" },
  ],
};

const itemLines = 10;

const itemColumns = columnsOf<"statementItems">();

function ofItem(column: ColumnId<"items">, rest: Rest): ComputedColumn {
  return itemColumns.computed({ id: column, ...rest }, ({ sourceRow }, { items }) =>
    cellAtOrBlank(items[column], sourceRow),
  );
}

export const statementItems: TableDefinition = {
  id: "statementItems",
  name: "StatementItems",
  caption: "Not restorable, with reasons",
  emptyRows: itemLines,
  fixedRows: true,
  columns: [
    itemColumns.computed(
      { id: "id", label: "Item", type: "text", width: 13, help: "As on its tag." },
      (line, { items }) => firstOrMore(line, items, items.id, itemLines),
    ),
    ofItem("item", { label: "What", type: "text", width: 18, help: "What it is." }),
    ofItem("quantity", { label: "Pieces", type: "whole number", width: 11, help: "How many." }),
    ofItem("room", { label: "Room", type: "text", width: 11, help: "Where it stood." }),
    ofItem("condition", { label: "Condition", type: "text", width: 11, help: "As it came in." }),
    ofItem("reason", { label: "Reason", type: "text", width: 10, help: "Code of the reason." }),
    ofItem("replacementValue", {
      label: "Value",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "As typed, of the whole line.",
    }),
    ofItem("reasonText", { label: "What was seen", type: "text", width: 20, help: "The reason in a sentence." }),
    ofItem("photo", { label: "Photo", type: "text", width: 11, help: "Taken before cleaning." }),
    ...listed("items", "statementItems", itemLines),
  ],
};
