import type { WorksheetFunction } from "../../../functions/define-function.ts";
import type { TableId } from "./log-types.ts";

/** Excel functions that formulas of the log use; each is one that every supported Excel and the workbench's grid know. */
export type SheetFunction =
  | "ABS"
  | "AND"
  | "AVERAGEIFS"
  | "COUNT"
  | "COUNTIFS"
  | "DATE"
  | "FIND"
  | "IF"
  | "INDEX"
  | "INT"
  | "ISERROR"
  | "ISNA"
  | "ISNUMBER"
  | "LEFT"
  | "LEN"
  | "LOWER"
  | "MATCH"
  | "MAX"
  | "MAXIFS"
  | "MID"
  | "MIN"
  | "MINIFS"
  | "MONTH"
  | "NA"
  | "NOT"
  | "OR"
  | "ROUND"
  | "ROW"
  | "ROWS"
  | "SEARCH"
  | "SMALL"
  | "SUBSTITUTE"
  | "SUM"
  | "SUMIFS"
  | "SUMPRODUCT"
  | "TEXT"
  | "TRIM"
  | "YEAR";

export type Operator = "=" | "<>" | "<" | ">" | "<=" | ">=" | "&" | "+" | "-" | "*" | "/";

/** What a formula is made of. `formulaText` writes it for Excel, `valueOf` works it out. */
export type Node =
  | { readonly kind: "literal"; readonly value: string | number | boolean }
  /** An argument left out. */
  | { readonly kind: "nothing" }
  /** This row's cell of a column of the same table. */
  | { readonly kind: "here"; readonly column: string }
  /** This row's cells from one column to another. */
  | { readonly kind: "span"; readonly first: string; readonly last: string }
  /** All data cells of a column. */
  | { readonly kind: "column"; readonly table: TableId; readonly column: string }
  /** The heading of a column. */
  | { readonly kind: "heading"; readonly table: TableId; readonly column: string }
  /** A named cell. */
  | { readonly kind: "named"; readonly field: string }
  | { readonly kind: "operation"; readonly operator: Operator; readonly left: Node; readonly right: Node }
  | { readonly kind: "apply"; readonly name: SheetFunction; readonly to: readonly Node[] }
  /** A worksheet function of ours, with its arguments in the order of its definition. */
  | { readonly kind: "call"; readonly of: WorksheetFunction; readonly to: readonly Node[] };

/** A value of a formula; `Word` is what its text can be, where that is one of a few words. */
export type Expression<Word extends string = string> = Node & { readonly mayBe?: Word };

/** All data cells of a column of a table. */
export type Column<Table extends TableId = TableId, Word extends string = string> = Extract<
  Node,
  { kind: "column" }
> & { readonly of?: Table; readonly mayBe?: Word };

/** What may stand where a value is wanted. */
export type Value<Word extends string = string> = Expression<Word> | string | number | boolean;

/** Throws a RangeError for a name that the log does not have: a description of another version may name it. */
export function nodeOf(value: Value | undefined): Node {
  if (value === undefined) throw new RangeError("A formula names a column or cell that the log does not have.");
  return typeof value === "object" ? value : { kind: "literal", value };
}

export function apply(name: SheetFunction, ...to: readonly Value[]): Expression {
  return { kind: "apply", name, to: to.map(nodeOf) };
}

export function operation(left: Value, operator: Operator, right: Value): Expression {
  return { kind: "operation", operator, left: nodeOf(left), right: nodeOf(right) };
}
