/** Columns whose formulas call worksheet functions of ours: Excel asks the add-in for each of their cells. */
import type { LogDefinition, TableDefinition } from "../model/definition.ts";
import { type Node, nodeOf } from "./expression.ts";
import { logNames, rowNames } from "./name-log.ts";

function calls(node: Node): boolean {
  switch (node.kind) {
    case "call":
      return true;
    case "operation":
      return calls(node.left) || calls(node.right);
    case "apply":
      return node.to.some(calls);
    default:
      return false;
  }
}

const known = new WeakMap<TableDefinition, ReadonlySet<string>>();

/** Their ids. */
export function callingColumns(table: TableDefinition, log: LogDefinition): ReadonlySet<string> {
  const found =
    known.get(table) ??
    new Set(
      table.columns.flatMap((column) =>
        column.role === "computed" && calls(nodeOf(column.formula(rowNames(table), logNames(log)))) ? [column.id] : [],
      ),
    );
  known.set(table, found);
  return found;
}

/** Tables with such columns whose rows name a bath, the baths themselves among them: its rows can be settled. */
export function settledTables(log: LogDefinition): readonly TableDefinition[] {
  return log.sheets
    .flatMap(({ tables }) => tables)
    .filter(
      (table) =>
        table.columns.some(({ id, role }) => id === "bath" && role === "input") && callingColumns(table, log).size > 0,
    );
}
