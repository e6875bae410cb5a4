import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { inWords } from "../../functions/arguments/wording.ts";
import { catalogue } from "../../functions/catalogue.ts";
import type { CellInput, CellMatrix, WorksheetFunction } from "../../functions/define-function.ts";
import { runs } from "../setup/random-runs.ts";
import type { Outcome } from "./answer-or-error.ts";
import { call, frozen } from "./answer-or-error.ts";
import { anyInput, blanks, nearExample } from "./any-cell.ts";

function isCell(value: unknown): boolean {
  return typeof value === "number" ? Number.isFinite(value) : typeof value === "string" || typeof value === "boolean";
}

function isRectangle(rows: CellMatrix): boolean {
  const width = rows[0]?.length ?? 0;
  return width > 0 && rows.every((row) => row.length === width && row.every(isCell));
}

/** The argument in the words of a message; a message may speak of one of several by its singular. */
function names(message: string, argument: string): boolean {
  const words = inWords(argument).toLowerCase();
  return [words, words.replace(/s$/, "")].some((one) => message.toLowerCase().includes(one));
}

function hasErrorCell(input: unknown): boolean {
  if (Array.isArray(input)) return input.some(hasErrorCell);
  return (
    typeof input === "object" && input !== null && ("code" in input || ("type" in input && input.type === "Error"))
  );
}

function checkRefusal(
  fn: WorksheetFunction,
  cells: readonly unknown[],
  { error, message }: Extract<Outcome, { error: string }>,
): void {
  if (message === "") {
    expect(cells.some(hasErrorCell), `${error} without a message`).toBe(true);
    return;
  }
  expect(["#VALUE!", "#N/A"]).toContain(error);
  const ownWords = message.replace(/“.*?”/gs, "");
  expect(ownWords).not.toMatch(/NaN|undefined|Infinity|null|\[object/);
  if (error === "#VALUE!")
    expect(
      fn.arguments.some(({ name }) => names(message, name)),
      message,
    ).toBe(true);
}

function check(fn: WorksheetFunction, cells: readonly unknown[]): void {
  const outcome = call(fn, cells);
  if ("answer" in outcome) {
    const { answer } = outcome;
    expect(Array.isArray(answer)).toBe(fn.result.dimensionality === "matrix");
    expect(Array.isArray(answer) ? isRectangle(answer) : isCell(answer), JSON.stringify(answer)).toBe(true);
  } else {
    checkRefusal(fn, cells, outcome);
  }
  expect(call(fn, cells)).toEqual(outcome);
}

describe("every worksheet function, whatever stands in the cells", () => {
  for (const fn of catalogue) {
    it(`${fn.id} gives finite values of its own shape, or refuses and names an argument; the same each time`, () => {
      fc.assert(
        fc.property(fc.tuple(...fn.arguments.map(() => anyInput)), (cells) => {
          check(fn, cells);
        }),
        runs(200),
      );
      fc.assert(
        fc.property(nearExample(fn), (cells) => {
          check(fn, cells);
        }),
        runs(400),
      );
    });
  }
});

/** The first example's cells with one replaced. */
function exampleWith(fn: WorksheetFunction, index: number, cell: unknown): unknown[] {
  const cells: unknown[] = fn.arguments.map((_argument, at) => fn.examples[0]?.cells[at]);
  cells[index] = cell;
  return cells;
}

describe("a blank cell", () => {
  for (const fn of catalogue) {
    it(`means the same to ${fn.id} as 0, null, an empty text and nothing at all`, () => {
      fn.arguments.forEach(({ name, optional }, index) => {
        // 0 °C is a temperature, and a titration to pH 8.3 often finds 0: the help says that a blank which Excel hands over as 0 counts as one.
        if ((fn.id === "UNITCONVERT" && name === "value") || (fn.id === "ALKALINITYSPLIT" && name === "p")) return;
        const outcomes = blanks.map((blank) => call(fn, exampleWith(fn, index, blank)));
        for (const outcome of outcomes) {
          expect(outcome, `${fn.id} ${name}`).toEqual(outcomes[0]);
          if (!optional && "message" in outcome) expect(outcome.message).toMatch(/blank/);
        }
      });
    });
  }
});

const wholeColumn = 200_000;
const blankColumn: unknown = frozen(Array.from({ length: wholeColumn }, () => [null]));

/** A column, or a list of two columns, goes on to the end of the sheet; a single row stays. */
function extended(input: CellInput): unknown {
  if (!Array.isArray(input) || input.length === 1) return input;
  const blankRow = Object.freeze((input[0] ?? []).map(() => null));
  return Object.freeze([
    ...input.map((row) => frozen([...row])),
    ...Array<unknown>(wholeColumn - input.length).fill(blankRow),
  ]);
}

/** As many rows as the other has: shares come back one for each weight, blank or not. */
function topRows(outcome: Outcome, other: Outcome): Outcome {
  if (!("answer" in outcome && "answer" in other && Array.isArray(outcome.answer) && Array.isArray(other.answer)))
    return outcome;
  return { answer: outcome.answer.slice(0, other.answer.length) };
}

describe("a whole column, mostly blank", () => {
  for (const fn of catalogue) {
    const withColumns = fn.examples.filter(({ cells }) => cells.some((cell) => Array.isArray(cell) && cell.length > 1));
    if (withColumns.length > 0) {
      it(`is no more to ${fn.id} than its used cells`, () => {
        for (const { cells } of withColumns) {
          const short = call(fn, cells);
          expect(topRows(call(fn, cells.map(extended)), short)).toEqual(short);
        }
      });
    }

    const ranges = [...fn.arguments.keys()].filter((index) => fn.arguments[index]?.dimensionality === "matrix");
    if (ranges.length > 0) {
      it(`that is all blank is nothing to ${fn.id}`, () => {
        for (const index of ranges)
          expect(call(fn, exampleWith(fn, index, blankColumn))).toEqual(call(fn, exampleWith(fn, index, null)));
      });
    }
  }
});

describe("the shape of a spill", () => {
  /** Numbers a little larger; blanks, texts and 0 stay. */
  const nudged = (input: CellInput): unknown => {
    if (Array.isArray(input)) return input.map((row) => row.map(nudged));
    return typeof input === "number" ? input * 1.0001 : input;
  };
  const sizes = (outcome: Outcome): unknown =>
    "answer" in outcome && Array.isArray(outcome.answer) ? outcome.answer.map((row) => row.length) : outcome;

  for (const fn of catalogue.filter(({ result }) => result.dimensionality === "matrix")) {
    it(`of ${fn.id} follows the shape of its arguments, not their numbers`, () => {
      for (const { cells } of fn.examples) expect(sizes(call(fn, cells.map(nudged)))).toEqual(sizes(call(fn, cells)));
    });
  }
});
