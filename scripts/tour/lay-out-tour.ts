import { referenceOf } from "../../functions/reference-of.ts";
import { linesOf } from "../../src/joblog/layout/line-breaks.ts";
import type { CellPlan, SheetPlan, ValidationPlan, WorkbookPlan } from "../../src/joblog/model/plan.ts";
import { functionTour } from "./function-tour.ts";
import { startHere } from "./start-here.ts";
import { partCells } from "./tour-cells.ts";
import { tourPage } from "./tour-page.ts";
import { type PlacedTour, placeTour, resolved, valueColumn } from "./tour-places.ts";
import { functionsOf, type TourSheet } from "./tour-sheet.ts";

/** What it answers, value, unit (two columns, the second for tables), formula. */
const columnWidths = [40, 17, 12, 12, 50];

/** Characters of a bold line across the sheet. */
const cautionWidth = 145;

/** Cautions of the functions used, each once. */
function cautionLines(sheet: TourSheet): readonly string[] {
  const texts = functionsOf(sheet)
    .flatMap((id) => referenceOf(id).cautions)
    .map(({ text }) => text);
  return [...new Set(texts)].flatMap((text) => linesOf(text, cautionWidth));
}

function headCells({ sheet, cautionLines: cautions }: PlacedTour): readonly CellPlan[] {
  return [
    { row: 0, column: 0, style: "title", kind: "value", value: sheet.title },
    { row: 1, column: 0, style: "purpose", kind: "value", value: sheet.story },
    ...cautions.map((line, index): CellPlan => ({
      row: 2 + index,
      column: 0,
      style: "caution",
      kind: "value",
      value: line,
    })),
  ];
}

function stepCells(placed: PlacedTour, tour: readonly PlacedTour[]): readonly CellPlan[] {
  return placed.sheet.steps.flatMap(({ caption, story }, index) => {
    const step = placed.steps[index];
    if (step === undefined) return [];
    return [
      { row: step.row, column: 0, style: "caption", kind: "value", value: caption } as const,
      { row: step.row + 1, column: 0, style: "purpose", kind: "value", value: story } as const,
      ...step.parts.flatMap((part) => partCells(part, (formula) => resolved(formula, placed, tour))),
    ];
  });
}

function choiceLists({ steps }: PlacedTour): readonly ValidationPlan[] {
  return steps
    .flatMap(({ parts }) => parts)
    .flatMap(({ part, row }): readonly ValidationPlan[] => {
      if (part.kind !== "input" || part.choices === undefined) return [];
      const choices = part.choices.join(", ");
      return [
        {
          area: { row, column: valueColumn, rows: 1, columns: 1 },
          rule: { kind: "list", choices: part.choices },
          errorTitle: part.label,
          errorMessage: `One of: ${choices}.`,
        },
      ];
    });
}

function laidOut(placed: PlacedTour, tour: readonly PlacedTour[]): SheetPlan {
  const { id, name, tabColor } = placed.sheet;
  return tourPage({
    id,
    name,
    tabColor,
    columnWidths,
    cells: [...headCells(placed), ...stepCells(placed, tour)],
    validations: choiceLists(placed),
  });
}

/** The function tour, to the cell. Throws a RangeError where a formula names what is not there. */
export function layOutTour(): WorkbookPlan {
  const tour = functionTour.map((sheet) => placeTour(sheet, cautionLines(sheet)));
  return {
    version: 1,
    released: {},
    sheets: [startHere(functionTour), ...tour.map((placed) => laidOut(placed, tour))],
    names: [],
  };
}
