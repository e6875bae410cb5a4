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

const isPattern = (text: string): boolean => /[*?~]/.test(text);

const isEmpty = (cell: Scalar): boolean => cell === null || cell === "";

function equalTo(text: string): Test {
  const number = numberIn(text);
  if (number !== undefined) return (cell) => numberOfCell(cell) === number;
  if (text === "") return isEmpty;
  if (isPattern(text)) return patternTest(text);
  const wanted = text.toLowerCase();
  return (cell) => typeof cell === "string" && cell.toLowerCase() === wanted;
}

const signs = ["<=", ">=", "<>", "<", ">", "="] as const;

type OrderSign = "<=" | ">=" | "<" | ">";

const orderTests: Readonly<Record<OrderSign, (one: number, other: number) => boolean>> = {
  "<": (one, other) => one < other,
  ">": (one, other) => one > other,
  "<=": (one, other) => one <= other,
  ">=": (one, other) => one >= other,
};

function compared(sign: OrderSign, text: string): Test {
  const holds = orderTests[sign];
  const limit = numberIn(text);
  if (limit !== undefined) return (cell) => typeof cell === "number" && holds(cell, limit);
  return (cell) => {
    const place = typeof cell === "string" ? order(cell, text) : undefined;
    return typeof place === "number" && holds(place, 0);
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

/** What a criterion asks for, as far as an ordered column can answer it. */
export type Wanted =
  | { readonly is: "content"; readonly content: string | number }
  | { readonly is: "beyond"; readonly sign: OrderSign; readonly limit: number }
  | { readonly is: "other" };

const other: Wanted = { is: "other" };

export function wantedBy(criterion: Scalar): Wanted {
  if (criterion instanceof CellError) return other;
  const text = typeof criterion === "string" ? criterion : String(criterion ?? 0);
  const sign = signs.find((one) => text.startsWith(one));
  const rest = text.slice(sign?.length ?? 0);
  const number = numberIn(rest);
  if (sign === "<>") return other;
  if (sign !== undefined && sign !== "=") return number === undefined ? other : { is: "beyond", sign, limit: number };
  if (number !== undefined) return { is: "content", content: number };
  return rest === "" || isPattern(rest) ? other : { is: "content", content: rest.toLowerCase() };
}

/** What "content" is compared with. */
export function contentOf(cell: Scalar): string | number | undefined {
  return numberOfCell(cell) ?? (typeof cell === "string" ? cell.toLowerCase() : undefined);
}
