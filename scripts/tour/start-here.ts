import { arithmeticAid } from "../../src/core/safety/cautions.ts";
import { linesOf } from "../../src/joblog/layout/line-breaks.ts";
import type { CellPlan, SheetPlan } from "../../src/joblog/model/plan.ts";
import { tourPage } from "./tour-page.ts";
import { functionsOf, type TourSheet } from "./tour-sheet.ts";

const storyWidth = 54;
const namesWidth = 46;

/** Clock, sheet, what happens, functions. */
const columnWidths = [9, 26, storyWidth, namesWidth];

const linePoints = 13;

/** A width counts digits; letters of running text are narrower, the capitals of the names wider. */
const lettersByDigit = 1.1;
const digitsByCapital = 1.25;

const opening = [
  "Every worksheet function of Bathsheet, in the order of one day at Quillhaven Contents Works: tank T1 from cold water to the drain.",
  "The shop, its people, claims, waters and the concentrate CN-1 are invented. So are all readings: take no figure from here to a tank.",
];

const howTo = [
  "Warm cells with a frame are for typing. Change one and the results follow, on later sheets too.",
  "Each result has its formula beside it. Type it into your own sheet and point it at your own cells.",
  "A number is in the unit beside it. Text with a unit is understood as well: type 458.7 L where gallons are asked for.",
  "The functions work once the Bathsheet add-in is installed. Without it you see stored values; a cell that is recalculated shows #NAME?.",
  "Some functions answer with several cells. In Excel one formula fills them all; here each cell takes its own by INDEX.",
  "A cell that shows #VALUE! or #N/A says why: select it and read the message beside it.",
];

const heads = ["Clock", "Sheet", "What happens", "Functions"];

function contents(tour: readonly TourSheet[], top: number): readonly CellPlan[] {
  const words = (
    row: number,
    column: number,
    value: string,
    style: "computed" | "headerComputed" = "computed",
  ): CellPlan => ({ row, column, style, numberFormat: "@", kind: "value", value });
  return [
    ...heads.map((head, column) => words(top, column, head, "headerComputed")),
    ...tour.flatMap((sheet, index) => {
      const row = top + 1 + index;
      const link: CellPlan = {
        row,
        column: 1,
        style: "computed",
        numberFormat: "General",
        kind: "formula",
        formula: `=HYPERLINK("#'${sheet.name}'!A1", "${sheet.name}")`,
      };
      return [
        words(row, 0, sheet.clock),
        link,
        words(row, 2, sheet.story),
        words(row, 3, functionsOf(sheet).join(", ")),
      ];
    }),
  ];
}

function heightOf(sheet: TourSheet): number {
  const lines = Math.max(
    linesOf(sheet.story, Math.floor(storyWidth * lettersByDigit)).length,
    linesOf(functionsOf(sheet).join(", "), Math.floor(namesWidth / digitsByCapital)).length,
  );
  return lines * linePoints + 3;
}

/** The first sheet: what the tour is, where everything stands, and how to change it. */
export function startHere(tour: readonly TourSheet[]): SheetPlan {
  const lines = (top: number, style: "purpose" | "fieldLabel", texts: readonly string[]): readonly CellPlan[] =>
    texts.map((value, index): CellPlan => ({ row: top + index, column: 0, style, kind: "value", value }));
  const caption = (row: number, value: string): CellPlan => ({
    row,
    column: 0,
    style: "caption",
    kind: "value",
    value,
  });
  const howTop = 5;
  const dayTop = howTop + howTo.length + 2;
  const cells = [
    { row: 0, column: 0, style: "title", kind: "value", value: "A day with T1: tour of the functions" } as const,
    ...lines(1, "purpose", opening),
    { row: 3, column: 0, style: "caution", kind: "value", value: arithmeticAid } as const,
    caption(howTop, "How to use it"),
    ...lines(howTop + 1, "fieldLabel", howTo),
    caption(dayTop, "The day; select a sheet's name to go there"),
    ...contents(tour, dayTop + 1),
  ];
  const heights = tour.map((sheet, index) => ({ row: dayTop + 2 + index, points: heightOf(sheet) }));
  return tourPage(
    { id: "startHere", name: "Start here", tabColor: "#1F4E57", columnWidths, validations: [], cells },
    heights,
  );
}
