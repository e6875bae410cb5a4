import type { Node, Operator } from "./expression.ts";
import type { TableId } from "./log-types.ts";

/** How a formula names things without knowing header texts or addresses. */
export interface References {
  /** This row's cell of a column of the same table: `Readings[[#This Row],[pH as read]]`. */
  readonly here: (column: string) => string;
  /** This row's cells from one column to another: `Readings[[#This Row],[pH as read]:[Sample temp, °F]]`. */
  readonly hereTo: (first: string, last: string) => string;
  /** A whole data column of any table: `Readings[[#Data],[pH as read]]`. */
  readonly all: (table: TableId, column: string) => string;
  /** The header row of a table: `Shares[[#Headers],[Claim]]`. */
  readonly header: (table: TableId, column: string) => string;
  /** A named cell of the log. */
  readonly named: (field: string) => string;
}

/** How tightly Excel binds its operators, loosest first. */
const binding: Readonly<Record<Operator, number>> = {
  "=": 1,
  "<>": 1,
  "<": 1,
  ">": 1,
  "<=": 1,
  ">=": 1,
  "&": 2,
  "+": 3,
  "-": 3,
  "*": 4,
  "/": 4,
};

/** Operators for which a group on the right says nothing. */
const groupsFreely: readonly Operator[] = ["&"];

function literalText(value: string | number | boolean): string {
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}

function operationText({ operator, left, right }: Extract<Node, { kind: "operation" }>, names: References): string {
  const part = (node: Node, isRight: boolean): string => {
    const text = formulaText(node, names);
    if (node.kind !== "operation") return text;
    const looser = binding[node.operator] - binding[operator];
    const grouped = looser < 0 || (looser === 0 && isRight && !groupsFreely.includes(operator));
    return grouped ? `(${text})` : text;
  };
  return `${part(left, false)}${operator}${part(right, true)}`;
}

/** The formula as Excel shows it, without its "=": US separators, full-form structured references. */
export function formulaText(node: Node, names: References): string {
  switch (node.kind) {
    case "literal":
      return literalText(node.value);
    case "nothing":
      return "";
    case "here":
      return names.here(node.column);
    case "span":
      return names.hereTo(node.first, node.last);
    case "column":
      return names.all(node.table, node.column);
    case "heading":
      return names.header(node.table, node.column);
    case "named":
      return names.named(node.field);
    case "operation":
      return operationText(node, names);
    case "apply":
      return `${node.name}(${node.to.map((one) => formulaText(one, names)).join(",")})`;
    case "call":
      return `BATH.${node.of.id}(${node.to.map((one) => formulaText(one, names)).join(",")})`;
  }
}
