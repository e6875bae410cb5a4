import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import { runs } from "../setup/random-runs.ts";
import { boundOf, namedCells, rowsOf } from "./sane-bounds.ts";

/** Slips of a unit or a decimal point: meq and mg, grains and mg, gallons and liters, thousands, and any power of ten. */
const slip = fc.oneof(
  fc.constantFrom(50.04345, 1 / 50.04345, 17.118, 1 / 17.118, 3.785411784, 1 / 3.785411784, 1000, 0.001, 100, 0.01),
  fc.integer({ min: -9, max: 9 }).map((power) => 10 ** power),
  fc.double({ min: 0.5, max: 2, noNaN: true }),
);

/** A number as it stands, slipped, or any finite one. */
const odd = (usual: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 4, arbitrary: slip.map((times) => usual * times) },
    { weight: 2, arbitrary: fc.double({ min: 0, max: 15, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min: 0, max: 500, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  );

/** One of a range's numbers is odd; texts and blanks stay, but for a blank that may be filled. */
function oddCell(cell: CellInput): fc.Arbitrary<CellInput> {
  if (typeof cell === "number") return odd(cell);
  if (!Array.isArray(cell)) return cell === null || cell === undefined ? odd(1) : fc.constant(cell);
  const places = cell.flatMap((row, at) =>
    row.flatMap((one, column) => (typeof one === "number" ? [{ at, column, one }] : [])),
  );
  if (places.length === 0) return fc.constant(cell);
  return fc
    .constantFrom(...places)
    .chain(({ at, column, one }) =>
      odd(one).map((value) => cell.map((row, index) => (index === at ? row.with(column, value) : row))),
    );
}

function oddCall(fn: WorksheetFunction): fc.Arbitrary<CellInput[]> {
  const some = fc.uniqueArray(fc.nat({ max: fn.arguments.length - 1 }), { maxLength: 3 });
  return fc.tuple(fc.constantFrom(...fn.examples), some).chain(([{ cells }, places]) =>
    fc.tuple(
      ...fn.arguments.map(({ choices }, index) => {
        const cell = cells[index] ?? null;
        // Where one of a few words stands, a number is only refused.
        return places.includes(index) && choices === undefined ? oddCell(cell) : fc.constant<CellInput>(cell);
      }),
    ),
  );
}

function answerTo(fn: WorksheetFunction, cells: readonly CellInput[]): CellValue | CellMatrix | undefined {
  try {
    return evaluate(fn, cells);
  } catch (refusal) {
    if (refusal instanceof DomainError) return undefined;
    throw refusal;
  }
}

/** Sums of shares of a figure may end beyond it by the rounding of a double. */
const rounding = 1e-9;

describe("no worksheet function gives what no shop can do, whatever finite numbers it is asked with", () => {
  for (const fn of catalogue) {
    it(`${fn.id} stays within what the tank, the scale or the dose before leaves room for`, () => {
      const bound = boundOf(fn);
      let answered = 0;
      fc.assert(
        fc.property(oddCall(fn), (cells) => {
          const answer = answerTo(fn, cells);
          if (answer === undefined) return;
          answered += 1;
          const given = namedCells(fn, cells);
          for (const row of rowsOf(answer)) {
            row.forEach((cell, column) => {
              if (typeof cell !== "number") return;
              const { low, high } = bound(given, row, column) ?? { low: -Number.MAX_VALUE, high: Number.MAX_VALUE };
              expect(cell, fn.id).toBeGreaterThanOrEqual(low - rounding * Math.abs(low));
              expect(cell, fn.id).toBeLessThanOrEqual(high + rounding * Math.abs(high));
            });
          }
        }),
        runs(100),
      );
      expect(answered).toBeGreaterThan(10);
    });
  }
});
