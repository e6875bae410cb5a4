import type { Operator } from "../formula/expression.ts";
import { Area, CellError, numberFrom, type Result, type Scalar, scalarOf, textFrom } from "./cell-value.ts";

/** Excel's order of unlike values: numbers before texts before truth values. */
const rank = (value: string | number | boolean): number => ["number", "string", "boolean"].indexOf(typeof value);

/** A blank takes the kind of what it is compared with. */
function likened(blank: Scalar, other: Scalar): Scalar {
  if (blank !== null) return blank;
  if (typeof other === "string") return "";
  return typeof other === "boolean" ? false : 0;
}

/** Negative, 0 or positive as the left value comes before, with or after the right one; case makes no difference. */
export function order(left: Scalar, right: Scalar): number | CellError {
  const [a, b] = [likened(left, right), likened(right, left)];
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  if (a === null || b === null) return 0;
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (typeof a === "string" && typeof b === "string")
    return a.toLowerCase() === b.toLowerCase() ? 0 : a.toLowerCase() < b.toLowerCase() ? -1 : 1;
  return Number(a) - Number(b);
}

function compared(operator: Operator, left: Scalar, right: Scalar): Scalar {
  const place = order(left, right);
  if (place instanceof CellError) return place;
  switch (operator) {
    case "=":
      return place === 0;
    case "<>":
      return place !== 0;
    case "<":
      return place < 0;
    case ">":
      return place > 0;
    case "<=":
      return place <= 0;
    default:
      return place >= 0;
  }
}

function reckoned(operator: "+" | "-" | "*" | "/", left: Scalar, right: Scalar): Scalar {
  const [a, b] = [numberFrom(left), numberFrom(right)];
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  switch (operator) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return b === 0 ? new CellError("#DIV/0!") : a / b;
  }
}

function joined(left: Scalar, right: Scalar): Scalar {
  const [a, b] = [textFrom(left), textFrom(right)];
  if (a instanceof CellError) return a;
  return b instanceof CellError ? b : a + b;
}

function ofTwo(operator: Operator, left: Scalar, right: Scalar): Scalar {
  switch (operator) {
    case "&":
      return joined(left, right);
    case "+":
    case "-":
    case "*":
    case "/":
      return reckoned(operator, left, right);
    default:
      return compared(operator, left, right);
  }
}

/** An operator between two values, or cell by cell where one is a column. */
export function operate(operator: Operator, left: Result, right: Result): Result {
  if (!(left instanceof Area) && !(right instanceof Area)) return ofTwo(operator, scalarOf(left), scalarOf(right));
  const length = Math.max(left instanceof Area ? left.cells.length : 0, right instanceof Area ? right.cells.length : 0);
  const at = (side: Result, index: number): Scalar =>
    side instanceof Area ? (side.cells[index] ?? null) : scalarOf(side);
  return new Area(Array.from({ length }, (_, index) => ofTwo(operator, at(left, index), at(right, index))));
}
