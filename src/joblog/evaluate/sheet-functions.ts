import type { SheetFunction } from "../formula/expression.ts";
import {
  Area,
  CellError,
  isError,
  numberFrom,
  type Result,
  type Scalar,
  scalarOf,
  Spill,
  textFrom,
  truthOf,
} from "./cell-value.ts";
import { criterionTest, wantedBy } from "./criterion.ts";
import { Meeting, rowsHolding } from "./rows-meeting.ts";
import { calendarDay, serialOf } from "./serial-date.ts";

type Implementation = (args: readonly Result[]) => Result;

const wrongValue = new CellError("#VALUE!");
const notFound = new CellError("#N/A");

const cellsOf = (result: Result): readonly Scalar[] => {
  if (result instanceof Area) return result.cells;
  return result instanceof Spill ? result.rows.flat() : [result];
};

/** What SUM and its kin see: numbers alone; words and blanks count for nothing, an error stops them. */
function numbersOf(args: readonly Result[]): readonly number[] | CellError {
  const cells = args.flatMap(cellsOf);
  return cells.find(isError) ?? cells.filter((cell) => typeof cell === "number");
}

const ofNumbers =
  (work: (numbers: readonly number[]) => Scalar): Implementation =>
  (args) => {
    const numbers = numbersOf(args);
    return numbers instanceof CellError ? numbers : work(numbers);
  };

const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

const greatest = (numbers: readonly number[]): number =>
  numbers.length === 0 ? 0 : numbers.reduce((most, one) => Math.max(most, one));

const least = (numbers: readonly number[]): number =>
  numbers.length === 0 ? 0 : numbers.reduce((fewest, one) => Math.min(fewest, one));

/** Numbers and texts as given, each by itself; the first error is the answer. */
function given<Value>(
  args: readonly Result[],
  as: (value: Scalar) => Value | CellError,
  work: (values: readonly Value[]) => Scalar,
): Scalar {
  const values: Value[] = [];
  for (const arg of args) {
    const value = as(scalarOf(arg));
    if (value instanceof CellError) return value;
    values.push(value);
  }
  return work(values);
}

const withNumbers =
  (work: (...numbers: readonly number[]) => Scalar): Implementation =>
  (args) =>
    given(args, numberFrom, (numbers) => work(...numbers));

const withTexts =
  (work: (...texts: readonly string[]) => Scalar): Implementation =>
  (args) =>
    given(args, textFrom, (texts) => work(...texts));

const withTruths =
  (work: (truths: readonly boolean[]) => boolean): Implementation =>
  (args) =>
    given(args, truthOf, work);

/** A test of every cell where it is given a column, or else of the one value. */
const tested =
  (test: (value: Scalar) => boolean): Implementation =>
  ([arg = null]) =>
    arg instanceof Area ? new Area(arg.cells.map(test)) : test(scalarOf(arg));

const rowsThatMeet = (args: readonly Result[]): Meeting =>
  new Meeting(
    args.flatMap((range, at) =>
      at % 2 === 1 ? [] : [{ cells: cellsOf(range), criterion: scalarOf(args[at + 1] ?? null) }],
    ),
  );

const numbersAt = (cells: readonly Scalar[], rows: Meeting): readonly number[] | CellError =>
  numbersOf([new Area(rows.rows().map((row) => cells[row] ?? null))]);

const ofRows =
  (work: (numbers: readonly number[]) => Scalar): Implementation =>
  ([range = null, ...pairs]) => {
    const numbers = numbersAt(cellsOf(range), rowsThatMeet(pairs));
    return numbers instanceof CellError ? numbers : work(numbers);
  };

const extremeOfRows =
  (which: "highest" | "lowest"): Implementation =>
  ([range = null, ...pairs]) => {
    const cells = cellsOf(range);
    const rows = rowsThatMeet(pairs);
    const found = rows.extreme(cells, which);
    if (found !== undefined) return found === "none" ? 0 : found;
    const numbers = numbersAt(cells, rows);
    if (numbers instanceof CellError) return numbers;
    return which === "highest" ? greatest(numbers) : least(numbers);
  };

/** Half away from zero, by the decimal that Excel shows rather than the binary fraction under it; 0 has no sign. */
function rounded(value: number, digits: number): number {
  const scale = 10 ** digits;
  return (Math.sign(value) * Math.round(Number((Math.abs(value) * scale).toPrecision(15)))) / scale + 0;
}

function match(key: Scalar, cells: readonly Scalar[]): Scalar {
  if (isError(key)) return key;
  const wanted = typeof key === "string" ? wantedBy(`=${key}`) : undefined;
  if (wanted?.is === "content" && typeof wanted.content === "string") {
    const row = rowsHolding(cells, wanted.content)[0];
    return row === undefined ? notFound : row + 1;
  }
  const test = typeof key === "string" ? criterionTest(`=${key}`) : (cell: Scalar): boolean => cell === (key ?? 0);
  const found = cells.findIndex((cell) => typeof cell === typeof (key ?? 0) && test(cell));
  return found < 0 ? notFound : found + 1;
}

function index(args: readonly Result[]): Result {
  const [from = null, row = null, column = null] = args;
  if (isError(from)) return from;
  return given([row, column], numberFrom, ([line = 1, place = 1]) => {
    const found = from instanceof Spill ? from.rows[line - 1]?.[(place || 1) - 1] : cellsOf(from)[line - 1];
    return found === undefined ? new CellError("#REF!") : found;
  });
}

function sumOfProducts(args: readonly Result[]): Scalar {
  const columns = args.map(cellsOf);
  const error = columns.flat().find(isError);
  if (error !== undefined) return error;
  const length = Math.max(...columns.map((column) => column.length));
  const product = (row: number): number =>
    columns.reduce((all, column) => {
      const cell = column[row] ?? 0;
      return all * (typeof cell === "number" ? cell : 0);
    }, 1);
  return total(Array.from({ length }, (_, row) => product(row)));
}

/** Decimals as `0.00` says; no other format is asked for. */
function formatted(value: number, format: string): string {
  const decimals = /^0\.(0+)$/.exec(format)?.[1];
  if (decimals === undefined) throw new RangeError(`TEXT is not worked out for the format ${format}.`);
  return rounded(value, decimals.length).toFixed(decimals.length);
}

/** Excel's functions as the log uses them. IF, ROW and ROWS need more than values and stand with the expressions. */
export const sheetFunctions: Readonly<Record<Exclude<SheetFunction, "IF" | "ROW" | "ROWS">, Implementation>> = {
  ABS: withNumbers((value = 0) => Math.abs(value)),
  AND: withTruths((truths) => truths.every(Boolean)),
  AVERAGEIFS: ofRows((numbers) => (numbers.length === 0 ? new CellError("#DIV/0!") : total(numbers) / numbers.length)),
  COUNT: (args) => args.flatMap(cellsOf).filter((cell) => typeof cell === "number").length,
  COUNTIFS: (args) => rowsThatMeet(args).rows().length,
  DATE: withNumbers((year = 0, month = 0, day = 0) => serialOf({ year, month, day })),
  FIND: withTexts((wanted = "", text = "") => (text.includes(wanted) ? text.indexOf(wanted) + 1 : wrongValue)),
  INDEX: index,
  INT: withNumbers((value = 0) => Math.floor(value)),
  ISERROR: tested(isError),
  ISNA: tested((value) => isError(value) && value.code === "#N/A"),
  ISNUMBER: tested((value) => typeof value === "number"),
  LEFT: ([text = null, length = 1]) =>
    given([text], textFrom, ([whole = ""]) => whole.slice(0, Number(scalarOf(length)))),
  LEN: withTexts((text = "") => text.length),
  LOWER: withTexts((text = "") => text.toLowerCase()),
  MATCH: ([key = null, column = null]) => {
    const cells = cellsOf(column);
    return key instanceof Area ? new Area(key.cells.map((one) => match(one, cells))) : match(scalarOf(key), cells);
  },
  MAX: ofNumbers(greatest),
  MAXIFS: extremeOfRows("highest"),
  MID: ([text = null, start = 1, length = 0]) =>
    given([text], textFrom, ([whole = ""]) =>
      whole.slice(Number(scalarOf(start)) - 1, Number(scalarOf(start)) - 1 + Number(scalarOf(length))),
    ),
  MIN: ofNumbers(least),
  MINIFS: extremeOfRows("lowest"),
  MONTH: withNumbers((serial = 0) => calendarDay(serial).month),
  NA: () => notFound,
  NOT: ([arg = null]) => {
    const opposite = (value: Scalar): Scalar => {
      const truth = truthOf(value);
      return truth instanceof CellError ? truth : !truth;
    };
    return arg instanceof Area ? new Area(arg.cells.map(opposite)) : opposite(scalarOf(arg));
  },
  OR: withTruths((truths) => truths.some(Boolean)),
  ROUND: withNumbers((value = 0, digits = 0) => rounded(value, digits)),
  SEARCH: ([wanted = null, text = null]) => {
    const search = withTexts((part = "", whole = "") => {
      const at = whole.toLowerCase().indexOf(part.toLowerCase());
      return at < 0 ? wrongValue : at + 1;
    });
    return wanted instanceof Area
      ? new Area(wanted.cells.map((one) => scalarOf(search([one, text]))))
      : search([wanted, text]);
  },
  SMALL: ([column = null, place = null]) => {
    const numbers = numbersOf([column]);
    if (numbers instanceof CellError) return numbers;
    const found = [...numbers].sort((a, b) => a - b)[Number(scalarOf(place)) - 1];
    return found === undefined ? new CellError("#NUM!") : found;
  },
  SUBSTITUTE: withTexts((text = "", old = "", by = "") => text.replaceAll(old, by)),
  SUM: ofNumbers(total),
  SUMIFS: ofRows(total),
  SUMPRODUCT: sumOfProducts,
  TEXT: ([value = null, format = null]) =>
    given([value], numberFrom, ([number = 0]) => given([format], textFrom, ([text = ""]) => formatted(number, text))),
  TRIM: withTexts((text = "") => text.replaceAll(/ +/g, " ").replaceAll(/^ | $/g, "")),
  YEAR: withNumbers((serial = 0) => calendarDay(serial).year),
};
