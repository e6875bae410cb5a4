import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DomainError } from "../../src/core/domain-error.ts";
import { catalogue } from "../../functions/catalogue.ts";
import { evaluate } from "../../functions/evaluate.ts";
import type { CellInput, CellValue, WorksheetFunction } from "../../functions/define-function.ts";

const words = [
  "", " ", "1+40", "1:40", "40:1", "1 in 40", "2.5%", "3 fl oz/gal", "60 gal", "-5 L", "1,500", "1 1/2", "1/0", "∞", "NaN", "1e400",
  "131 °F", "-500 C", "18 gpg", "unknown", "hydroxide", "US", "metric", "parts", "acid", "WQA", "gpg", "mg/L", "%", "toString", "__proto__",
];

const cell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.constantFrom<CellValue>(null, 0, -0, 1, -1, 7, 10.8, 11.3, 14, 25, 77, 1e-300, 1e300, -1e300, Number.MAX_VALUE, Number.MIN_VALUE, true, false),
  fc.constantFrom(...words),
  fc.double(),
  fc.double({ min: 0, max: 15, noNaN: true }),
  fc.string({ maxLength: 12 }),
);

const input: fc.Arbitrary<CellInput> = fc.oneof(
  { weight: 4, arbitrary: cell },
  { weight: 1, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 4 }) },
);

function isFinite(value: unknown): boolean {
  return typeof value === "number" ? Number.isFinite(value) : typeof value === "string" || typeof value === "boolean" || value === null;
}

function answersOrRefuses(fn: WorksheetFunction, cells: readonly CellInput[]): void {
  try {
    const result = evaluate(fn, cells);
    expect(Array.isArray(result) ? result.flat().every(isFinite) : isFinite(result)).toBe(true);
  } catch (refusal) {
    expect(refusal).toBeInstanceOf(DomainError);
    const ownWords = String(refusal).replace(/“.*?”/gs, "");
    expect(ownWords).not.toMatch(/NaN|undefined|Infinity|\[object/);
  }
}

function answerOrMessage(fn: WorksheetFunction, cells: readonly CellInput[]): string {
  try {
    return JSON.stringify(evaluate(fn, cells));
  } catch (refusal) {
    return String(refusal);
  }
}

/** What a user would type: the first example's cells, some of them replaced. */
function nearExample(fn: WorksheetFunction): fc.Arbitrary<CellInput[]> {
  const example = fn.examples[0]?.cells ?? [];
  return fc.tuple(...fn.arguments.map((_argument, index) => fc.oneof(fc.constant(example[index]), input)));
}

describe("every worksheet function, whatever stands in the cells", () => {
  for (const fn of catalogue) {
    it(`${fn.id} gives finite values or refuses with a message`, () => {
      fc.assert(fc.property(fc.tuple(...fn.arguments.map(() => input)), (cells) => { answersOrRefuses(fn, cells); }), { numRuns: 300 });
      fc.assert(fc.property(nearExample(fn), (cells) => { answersOrRefuses(fn, cells); }), { numRuns: 500 });
    });
  }

  it("treats null, undefined, an empty text and 0 alike in every required argument that must not be 0", () => {
    const zeroMakesSense = ["UNITCONVERT", "HARDNESS"];
    for (const fn of catalogue.filter(({ id }) => !zeroMakesSense.includes(id))) {
      fn.arguments.forEach((argument, index) => {
        if (argument.optional) return;
        for (const blank of [null, undefined, "", 0, [[null]], [[0]]]) {
          const cells = [...(fn.examples[0]?.cells ?? [])];
          cells[index] = blank;
          expect(() => evaluate(fn, cells), `${fn.id} ${argument.name} ${JSON.stringify(blank)}`).toThrow(/blank/);
        }
      });
    }
  });

  it("takes blank, 0 and left out alike in every optional argument", () => {
    for (const fn of catalogue) {
      fn.arguments.forEach((argument, index) => {
        if (!argument.optional) return;
        const example = fn.examples[0]?.cells ?? [];
        const answers = [undefined, null, "", 0, [[""]]].map((blank) => {
          const cells: CellInput[] = fn.arguments.map((_each, at) => example[at]);
          cells[index] = blank;
          return answerOrMessage(fn, cells);
        });
        expect(new Set(answers).size, `${fn.id} ${argument.name}`).toBe(1);
      });
    }
  });
});
