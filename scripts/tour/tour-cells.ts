import type { CellPlan, StyleId } from "../../src/joblog/model/plan.ts";
import { type PlacedPart, valueColumn } from "./tour-places.ts";
import type { TourGrid, TourInput, TourList, TourResult } from "./tour-sheet.ts";

const unitColumn = 2;
const formulaColumn = 4;

const factHeads = ["Given and worked out", "Value", "Unit", "", "Formula in the value's cell"];

/** What takes the ids of a formula to cells. */
export type Resolve = (formula: string) => string;

function value(row: number, column: number, style: StyleId, content: string | number, numberFormat = "@"): CellPlan {
  return { row, column, style, numberFormat, kind: "value", value: content };
}

function formula(row: number, column: number, style: StyleId, content: string, numberFormat: string): CellPlan {
  return { row, column, style, numberFormat, kind: "formula", formula: content };
}

function heads(row: number, words: readonly string[], style: StyleId): readonly CellPlan[] {
  return words.map((word, column) => value(row, column, style, word));
}

function inputCells({ label, value: given, unit, format, note }: TourInput, row: number): readonly CellPlan[] {
  return [
    value(row, 0, "computed", label),
    value(row, valueColumn, "fieldInput", given, format),
    value(row, unitColumn, "fieldHelp", unit),
    ...(note === undefined ? [] : [value(row, formulaColumn, "headerHelper", note)]),
  ];
}

function resultCells(
  { answers, formula: asked, unit, format }: TourResult,
  row: number,
  resolve: Resolve,
): readonly CellPlan[] {
  return [
    answers.startsWith("=")
      ? formula(row, 0, "computed", resolve(answers), "General")
      : value(row, 0, "computed", answers),
    formula(row, valueColumn, "fieldComputed", resolve(asked), format),
    value(row, unitColumn, "fieldHelp", unit),
    value(row, formulaColumn, "computed", resolve(asked)),
  ];
}

function listCells({ columns, rows }: TourList, row: number): readonly CellPlan[] {
  return rows.flatMap((line, index) =>
    line.map((given, column) => value(row + index, column, "fieldInput", given, columns[column]?.format)),
  );
}

/** The formula beside a row is that of its second cell. */
function gridCells(
  { formula: asked, rows: [first, last], columns }: TourGrid,
  row: number,
  headRow: number,
  resolve: Resolve,
): readonly CellPlan[] {
  const cell = (line: number, spilled: number): string =>
    `=INDEX(${resolve(asked).slice(1)}, ${String(line)}, ${String(spilled)})`;
  const head = Array.from({ length: formulaColumn }, (_, column): CellPlan => {
    const { header, spilled } = columns[column] ?? { header: "", spilled: 0 };
    return header === undefined
      ? formula(headRow, column, "headerComputed", cell(1, spilled), "General")
      : value(headRow, column, "headerComputed", header);
  });
  return [
    ...head,
    value(headRow, formulaColumn, "headerComputed", "Formula in the second cell of the row"),
    ...Array.from({ length: last - first + 1 }, (_, index) => [
      ...columns.map(({ spilled, format }, column) =>
        formula(row + index, column, "fieldComputed", cell(first + index, spilled), format),
      ),
      value(row + index, formulaColumn, "computed", cell(first + index, columns[1]?.spilled ?? 1)),
    ]).flat(),
  ];
}

/** The cells of a part with its column heads. */
export function partCells({ part, row, headRow }: PlacedPart, resolve: Resolve): readonly CellPlan[] {
  const under = (words: readonly string[], style: StyleId, cells: readonly CellPlan[]): readonly CellPlan[] =>
    headRow === undefined ? cells : [...heads(headRow, words, style), ...cells];
  switch (part.kind) {
    case "input":
      return under(factHeads, "headerComputed", inputCells(part, row));
    case "result":
      return under(factHeads, "headerComputed", resultCells(part, row, resolve));
    case "list":
      return under(
        part.columns.map(({ header }) => header),
        "headerInput",
        listCells(part, row),
      );
    case "grid":
      return headRow === undefined ? [] : gridCells(part, row, headRow, resolve);
  }
}
