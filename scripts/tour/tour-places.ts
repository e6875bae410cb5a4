import { absoluteCell, areaAddress, cellAddress } from "../../src/joblog/layout/addresses.ts";
import type { AreaPlan } from "../../src/joblog/model/plan.ts";
import type { TourPart, TourSheet } from "./tour-sheet.ts";

/** Where the parts of a sheet stand, and what its formulas can name. */
export interface PlacedTour {
  readonly sheet: TourSheet;
  readonly cautionLines: readonly string[];
  readonly steps: readonly { readonly row: number; readonly parts: readonly PlacedPart[] }[];
  readonly areas: ReadonlyMap<string, AreaPlan>;
}

export interface PlacedPart {
  readonly part: TourPart;
  /** Where the column heads stand; a run of inputs and results has them once. */
  readonly headRow: number | undefined;
  readonly row: number;
}

/** Column of what a person types and of what a formula answers. */
export const valueColumn = 1;

/** Caption and story. */
const headRows = 2;

function rowsOf(part: TourPart): number {
  if (part.kind === "list") return part.rows.length;
  return part.kind === "grid" ? part.rows[1] - part.rows[0] + 1 : 1;
}

function isTable(part: TourPart | undefined): boolean {
  return part === undefined || part.kind === "list" || part.kind === "grid";
}

function areasOf({ part, row }: PlacedPart): readonly (readonly [string, AreaPlan])[] {
  if (part.kind === "grid") return [];
  if (part.kind !== "list")
    return part.id === undefined ? [] : [[part.id, { row, column: valueColumn, rows: 1, columns: 1 }]];
  const rows = part.rows.length;
  return [
    [part.id, { row, column: 0, rows, columns: part.columns.length }],
    ...part.columns.map(({ id }, column) => [id, { row, column, rows, columns: 1 }] as const),
  ];
}

/** A blank row stands before a table that follows something, and before what follows a table. */
export function placeTour(sheet: TourSheet, cautionLines: readonly string[]): PlacedTour {
  let row = 3 + cautionLines.length;
  const steps = sheet.steps.map(({ parts }) => {
    const stepRow = row;
    row += headRows;
    const placed = parts.map((part, index): PlacedPart => {
      const begins = isTable(part) || isTable(parts[index - 1]);
      if (begins && index > 0) row += 1;
      const headRow = begins ? row++ : undefined;
      const first = row;
      row += rowsOf(part);
      return { part, headRow, row: first };
    });
    row += 1;
    return { row: stepRow, parts: placed };
  });
  return { sheet, cautionLines, steps, areas: new Map(steps.flatMap(({ parts }) => parts).flatMap(areasOf)) };
}

/** The formula with its ids replaced by cells. Throws a RangeError where it names what is not there. */
export function resolved(formula: string, from: PlacedTour, tour: readonly PlacedTour[]): string {
  return formula.replaceAll(/\[(?:(\w+)\.)?(\w+)\]/g, (name, sheetId: string | undefined, id: string) => {
    const placed = sheetId === undefined ? from : tour.find(({ sheet }) => sheet.id === sheetId);
    const area = placed?.areas.get(id);
    if (placed === undefined || area === undefined)
      throw new RangeError(`${from.sheet.name} has nothing for ${name} in ${formula}`);
    // Excel shows a name of one word without quotes.
    if (placed !== from) return absoluteCell(placed.sheet.name, area.row, area.column).replace(/^'(\w+)'!/, "$1!");
    return area.rows * area.columns === 1 ? cellAddress(area.row, area.column) : areaAddress(area);
  });
}
