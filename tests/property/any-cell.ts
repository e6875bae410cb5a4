import fc from "fast-check";

import type { WorksheetFunction } from "../../functions/define-function.ts";
import { CustomFunctionError } from "../../src/workbench/host/functions/custom-functions.ts";

/** What people type and paste: strengths, quantities and numbers in every locale's shape, words, and nonsense. */
const texts = [
  "",
  " ",
  "\u00a0",
  "\u3000",
  "\u200b",
  "1+40",
  "1:40",
  "40:1",
  "1 in 40",
  "2.5%",
  "3 fl oz/gal",
  "3 oz/gal",
  "60 gal",
  "-5 L",
  "１，５　Ｌ",
  "1,5",
  "1,500",
  "1.500,25",
  "1 500",
  "1'500",
  "1,00,000",
  "−3",
  "1 1/2",
  "½",
  "1/0",
  "1e3",
  "1e400",
  "∞",
  "NaN",
  "131 °F",
  "-500 C",
  "55 ℃",
  "18 gpg",
  "18 °dH",
  "unknown",
  "hydroxide",
  "hidroxide",
  "US",
  "metric",
  "parts",
  "acid",
  "sulphuric",
  "WQA",
  "gpg",
  "mg/L",
  "%",
  "#N/A",
  "TRUE",
  "2026-11-25",
  "11/25/2026",
  "toString",
  "__proto__",
  "x".repeat(40_000),
];

const numbers = [
  0,
  -0,
  1,
  -1,
  2,
  7,
  10.8,
  11.3,
  14,
  25,
  77,
  0.025,
  1e-300,
  -1e-300,
  1e300,
  -1e300,
  Number.MAX_VALUE,
  Number.MIN_VALUE,
  Number.EPSILON,
  Number.NaN,
  Infinity,
  -Infinity,
  // Dates as serial numbers.
  45_000,
  46_351.5729,
];

const plainCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...numbers, null, undefined, true, false) },
  { weight: 3, arbitrary: fc.constantFrom(...texts) },
  fc.double(),
  fc.double({ min: 0, max: 15, noNaN: true }),
  fc.string({ maxLength: 12, unit: "binary" }),
);

/** Cells that reach a function as objects, by the shapes of Excel's cell values. */
const errorCell = fc
  .constantFrom("#DIV/0!", "#N/A", "#NAME?", "#NULL!", "#NUM!", "#REF!", "#VALUE!", "#SPILL!", "#BUSY!")
  .chain((error) =>
    fc.constantFrom<unknown>({ type: "Error", basicType: "Error", basicValue: error }, new CustomFunctionError(error)),
  );
const objectCell: fc.Arbitrary<unknown> = fc.oneof(
  plainCell.map((value) => ({ type: "FormattedNumber", basicType: "Double", basicValue: value, numberFormat: "0.00" })),
  fc.constantFrom<unknown>(
    { type: "Entity", basicType: "Error", basicValue: "#VALUE!", text: "Concentrate" },
    { type: "Empty", basicType: "Empty", basicValue: "" },
    {},
    new Date(0),
    3n,
    Symbol("cell"),
    () => 1,
  ),
);

const anyCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 12, arbitrary: plainCell },
  { weight: 1, arbitrary: errorCell },
  { weight: 1, arbitrary: objectCell },
);

const anyRange = fc.oneof(
  fc.array(fc.array(anyCell, { maxLength: 3 }), { maxLength: 4 }),
  fc.array(fc.tuple(plainCell), { minLength: 1, maxLength: 12 }),
  fc.array(plainCell, { minLength: 1, maxLength: 5 }).map((row) => [row]),
  fc.array(fc.tuple(fc.constantFrom("NaOH", "Na2CO3", "water", "", "soap"), plainCell), { minLength: 1, maxLength: 4 }),
);

export const anyInput: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: anyCell },
  { weight: 1, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: anyRange },
);

/** What a user would have: one of the examples' cells, one or two of them replaced. */
export function nearExample(fn: WorksheetFunction): fc.Arbitrary<unknown[]> {
  const places = fc.uniqueArray(fc.nat({ max: fn.arguments.length - 1 }), { minLength: 1, maxLength: 2 });
  return fc.tuple(fc.constantFrom(...fn.examples), places, anyInput, anyInput).map(([example, at, first, second]) => {
    const cells: unknown[] = fn.arguments.map((_argument, index) => example.cells[index]);
    at.forEach((place, index) => {
      cells[place] = index === 0 ? first : second;
    });
    return cells;
  });
}

/** All of these mean "nothing was given". */
export const blanks: readonly unknown[] = [null, undefined, "", 0, [[null]], [[""]], [[0]], [], [[]]];
