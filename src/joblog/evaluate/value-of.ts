import type { CellInput, CellValue } from "../../../functions/define-function.ts";
import { evaluate } from "../../../functions/evaluate.ts";
import { DomainError } from "../../core/limits/domain-error.ts";
import type { Node } from "../formula/expression.ts";
import type { TableId } from "../formula/log-types.ts";
import { Area, CellError, isError, type Result, type Scalar, scalarOf, Spill, truthOf } from "./cell-value.ts";
import { operate } from "./operate.ts";
import { sheetFunctions } from "./sheet-functions.ts";

/** Where a formula stands, and what the cells that it names hold. */
export interface Surroundings {
  /** Data row of the table that the formula stands in, from 0; a named cell stands in none. */
  readonly line: number | undefined;
  readonly here: (column: string) => Scalar;
  readonly span: (first: string, last: string) => readonly Scalar[];
  readonly column: (table: TableId, column: string) => readonly Scalar[];
  /** One cell of a column, without working out the others. */
  readonly cell: (table: TableId, column: string, line: number) => Scalar | undefined;
  readonly named: (field: string) => Scalar;
}

const asCell = (value: CellValue): Scalar => value ?? "";

/** What a cell would show for this call: a refusal as its error, with the sentence kept. */
function called({ of, to }: Extract<Node, { kind: "call" }>, around: Surroundings): Result {
  const results = to.map((node) => valueOf(node, around));
  const cells = results.map((result): CellInput | CellError => {
    if (result instanceof Area) return result.cells.find(isError) ?? argumentOf(result);
    const value = scalarOf(result);
    return value;
  });
  const error = cells.find((cell) => cell instanceof CellError);
  if (error !== undefined) return error;
  try {
    const answer = evaluate(of, cells as readonly CellInput[]);
    return Array.isArray(answer) ? new Spill(answer.map((row) => row.map(asCell))) : asCell(answer);
  } catch (refusal) {
    if (!(refusal instanceof DomainError)) throw refusal;
    return new CellError(refusal.refusal === "no-answer" ? "#N/A" : "#VALUE!", refusal.message);
  }
}

const argumentOf = ({ cells }: Area): CellValue[][] => cells.map((cell) => [cell instanceof CellError ? null : cell]);

/** The branch that counts alone is worked out, as Excel does. */
function chosen([condition, result, otherwise]: readonly Node[], around: Surroundings): Result {
  const holds = truthOf(condition === undefined ? null : scalarOf(valueOf(condition, around)));
  if (holds instanceof CellError) return holds;
  const branch = holds ? result : otherwise;
  return branch === undefined ? holds : valueOf(branch, around);
}

/** Rows are counted from the heading of the table, which is 0. */
function rowOf([of]: readonly Node[], around: Surroundings): Result {
  if (of?.kind === "heading") return 0;
  if (of?.kind === "column") return new Area(around.column(of.table, of.column).map((_, line) => line + 1));
  return around.line === undefined ? new CellError("#VALUE!") : around.line + 1;
}

function applied({ name, to }: Extract<Node, { kind: "apply" }>, around: Surroundings): Result {
  if (name === "IF") return chosen(to, around);
  if (name === "ROW") return rowOf(to, around);
  const [first, second] = to;
  if (name === "ROWS")
    return first?.kind === "column" ? around.column(first.table, first.column).length : new CellError("#VALUE!");
  if (name === "INDEX" && first?.kind === "column" && second !== undefined && to.length === 2) {
    const position = scalarOf(valueOf(second, around));
    if (isError(position)) return position;
    if (typeof position !== "number") return new CellError("#VALUE!");
    return (
      around.cell(first.table, first.column, position - 1) ??
      (position > around.column(first.table, first.column).length ? new CellError("#REF!") : null)
    );
  }
  return sheetFunctions[name](to.map((node) => valueOf(node, around)));
}

/** Works an expression out as Excel would. */
export function valueOf(node: Node, around: Surroundings): Result {
  switch (node.kind) {
    case "literal":
      return node.value;
    case "nothing":
      return null;
    case "here":
      return around.here(node.column);
    case "span":
      return new Area(around.span(node.first, node.last));
    case "column":
      return new Area(around.column(node.table, node.column));
    case "heading":
      return new CellError("#VALUE!");
    case "named":
      return around.named(node.field);
    case "operation":
      return operate(node.operator, valueOf(node.left, around), valueOf(node.right, around));
    case "apply":
      return applied(node, around);
    case "call":
      return called(node, around);
  }
}
