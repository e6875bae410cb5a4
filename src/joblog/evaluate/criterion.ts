import { CellError, type Scalar } from "./cell-value.ts";
import { order } from "./operate.ts";

type Test = (cell: Scalar) => boolean;

function numberIn(text: string): number | undefined {
  const number = text.trim() === "" ? Number.NaN : Number(text);
  return Number.isNaN(number) ? undefined : number;
}

/** A cell of a column as a number, where it is one or is written as one. */
function numberOfCell(cell: Scalar): number | undefined {
  if (typeof cell === "number") return cell;
  return typeof cell === "string" ? numberIn(cell) : undefined;
}

/** `*`, `?` and `~` of Excel's patterns. */
function patternTest(pattern: string): Test {
  const source = pattern.replaceAll(/~[*?~]|[*?]|[\\^$.|+()[\]{}]/g, (mark) => {
    if (mark === "*") return "[^]*";
    return mark === "?" ? "[^]" : `\\${mark.startsWith("~") ? mark.slice(1) : mark}`;
  });
  const expression = new RegExp(`^${source}$`, "i");
  return (cell) => typeof cell === "string" && expression.test(cell);
}

const isEmpty = (cell: Scalar): boolean => cell === null || cell === "";

function equalTo(text: string): Test {
  const number = numberIn(text);
  if (number !== undefined) return (cell) => numberOfCell(cell) === number;
  return text === "" ? isEmpty : patternTest(text);
}

const signs = ["<=", ">=", "<>", "<", ">", "="] as const;

function compared(sign: "<=" | ">=" | "<" | ">", text: string): Test {
  const limit = numberIn(text);
  return (cell) => {
    const value = limit === undefined ? cell : typeof cell === "number" ? cell : undefined;
    if (
      value === undefined ||
      value === null ||
      value instanceof CellError ||
      (limit === undefined && typeof value !== "string")
    )
      return false;
    const place = order(value, limit ?? text);
    if (place instanceof CellError) return false;
    if (sign === "<") return place < 0;
    if (sign === ">") return place > 0;
    return sign === "<=" ? place <= 0 : place >= 0;
  };
}

/** Whether a cell meets the criterion of COUNTIFS and its kin; a blank criterion is a 0 to them. */
export function criterionTest(criterion: Scalar): Test {
  if (criterion instanceof CellError) return (cell) => cell instanceof CellError && cell.code === criterion.code;
  if (typeof criterion !== "string") return equalTo(String(criterion ?? 0));
  const text = criterion;
  const sign = signs.find((one) => text.startsWith(one));
  if (sign === undefined) return equalTo(text);
  const rest = text.slice(sign.length);
  if (sign === "=") return equalTo(rest);
  if (sign === "<>") {
    if (rest === "") return (cell) => cell !== null;
    const same = equalTo(rest);
    return (cell) => !same(cell);
  }
  return compared(sign, rest);
}
