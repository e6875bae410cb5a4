import { CellError, type Scalar } from "./cell-value.ts";
import { contentOf, criterionTest, type Wanted, wantedBy } from "./criterion.ts";

/** A column's rows in the order of the numbers that they hold; other cells are in none. */
interface Ascending {
  readonly rows: readonly number[];
  readonly numbers: readonly number[];
  readonly hasErrors: boolean;
}

const ascendingOf = new WeakMap<readonly Scalar[], Ascending>();

function ascending(cells: readonly Scalar[]): Ascending {
  const known = ascendingOf.get(cells);
  if (known !== undefined) return known;
  const numbered = cells.flatMap((cell, row) => (typeof cell === "number" ? [{ row, number: cell }] : []));
  numbered.sort((one, other) => one.number - other.number);
  const order = {
    rows: numbered.map(({ row }) => row),
    numbers: numbered.map(({ number }) => number),
    hasErrors: cells.some((cell) => cell instanceof CellError),
  };
  ascendingOf.set(cells, order);
  return order;
}

const rowsOf = new WeakMap<readonly Scalar[], ReadonlyMap<string | number, readonly number[]>>();

/** A column's rows by the word or number that they hold. */
function rowsByContent(cells: readonly Scalar[]): ReadonlyMap<string | number, readonly number[]> {
  const known = rowsOf.get(cells);
  if (known !== undefined) return known;
  const rows = new Map<string | number, number[]>();
  cells.forEach((cell, row) => {
    const content = contentOf(cell);
    if (content === undefined) return;
    const among = rows.get(content);
    if (among === undefined) rows.set(content, [row]);
    else among.push(row);
  });
  rowsOf.set(cells, rows);
  return rows;
}

/** The rows that hold just this word (in lower case) or number, from 0. */
export function rowsHolding(cells: readonly Scalar[], wanted: string | number): readonly number[] {
  return rowsByContent(cells).get(wanted) ?? [];
}

/** How many of the ascending numbers lie under the limit, or at most at it. */
function countUnder(numbers: readonly number[], limit: number, orAt: boolean): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    const number = numbers[middle] ?? 0;
    if (number < limit || (orAt && number === limit)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Which places in a column's ascending order can meet its criteria. */
interface Window {
  readonly from: number;
  readonly to: number;
}

function narrowed({ from, to }: Window, { numbers }: Ascending, wanted: Wanted): Window {
  if (wanted.is !== "beyond") return { from, to };
  const { sign, limit } = wanted;
  const under = countUnder(numbers, limit, sign === "<=" || sign === ">");
  return sign.startsWith("<") ? { from, to: Math.min(to, under) } : { from: Math.max(from, under), to };
}

/** `range, criterion` as COUNTIFS and its kin take them. */
export interface Pair {
  readonly cells: readonly Scalar[];
  readonly criterion: Scalar;
}

/** Rows that meet every criterion. What a column holds is put in order once, so that no row need be asked that cannot be one. */
export class Meeting {
  private readonly length: number;
  private readonly tests: readonly ((row: number) => boolean)[];
  private readonly windows = new Map<readonly Scalar[], Window>();
  private holding: readonly number[] | undefined;

  constructor(pairs: readonly Pair[]) {
    this.length = pairs[0]?.cells.length ?? 0;
    this.tests = pairs.map(({ cells, criterion }) => {
      const meets = criterionTest(criterion);
      return (row) => meets(cells[row] ?? null);
    });
    for (const { cells, criterion } of pairs) this.narrow(cells, wantedBy(criterion));
  }

  private narrow(cells: readonly Scalar[], wanted: Wanted): void {
    if (wanted.is === "content") {
      const rows = rowsHolding(cells, wanted.content);
      if (this.holding === undefined || rows.length < this.holding.length) this.holding = rows;
    }
    if (wanted.is === "beyond") this.windows.set(cells, narrowed(this.window(cells), ascending(cells), wanted));
  }

  private window(cells: readonly Scalar[]): Window {
    return this.windows.get(cells) ?? { from: 0, to: ascending(cells).rows.length };
  }

  private meets(row: number): boolean {
    return row < this.length && this.tests.every((test) => test(row));
  }

  /** All of them from 0, in their order. */
  rows(): readonly number[] {
    let candidates = this.holding;
    for (const [cells, { from, to }] of this.windows)
      if (to - from < (candidates?.length ?? this.length))
        candidates = ascending(cells)
          .rows.slice(from, to)
          .sort((one, other) => one - other);
    if (candidates !== undefined) return candidates.filter((row) => this.meets(row));
    return Array.from({ length: this.length }, (_, row) => row).filter((row) => this.meets(row));
  }

  /**
   * The highest or lowest number of a column in these rows, looked for from that end; undefined where an error of the
   * column might be among them, and "none" where no number is.
   */
  extreme(cells: readonly Scalar[], which: "highest" | "lowest"): number | "none" | undefined {
    const { rows, numbers, hasErrors } = ascending(cells);
    if (hasErrors) return undefined;
    const { from, to } = this.window(cells);
    const few = Math.min(
      this.holding?.length ?? this.length,
      ...[...this.windows.values()].map((one) => one.to - one.from),
    );
    if (few * 4 < to - from) return undefined;
    for (let step = 0; step < to - from; step += 1) {
      const place = which === "highest" ? to - 1 - step : from + step;
      if (this.meets(rows[place] ?? this.length)) return numbers[place];
    }
    return "none";
  }
}
