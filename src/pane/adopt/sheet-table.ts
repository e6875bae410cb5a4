import type { SheetReading } from "../../excel/read/read-active-sheet.ts";
import { cellWords, headingWords, isBlankCell } from "./cell-words.ts";
import { headingsKnown } from "./heading-words.ts";
import { bareUnit, isUnitRow } from "./unit-row.ts";

/** A sheet seen as a table: headings, and the rows beneath that hold anything. */
export interface SheetTable {
  readonly headings: readonly string[];
  readonly rows: readonly SheetRow[];
}

export interface SheetRow {
  /** As Excel numbers it. */
  readonly number: number;
  readonly cells: readonly unknown[];
}

/** Headings stand near the top. */
const rowsLookedAt = 40;

function likeness(row: readonly unknown[], next: readonly unknown[]): number {
  const texts = row
    .filter((value) => typeof value === "string" && /\p{L}/u.test(value))
    .map((value) => cellWords(value).toLowerCase());
  const known = texts.filter((text) => headingWords(text).some((word) => headingsKnown.has(word))).length;
  const others = row.filter((value) => !isBlankCell(value)).length - texts.length;
  const filledBelow = next.filter((value) => !isBlankCell(value)).length;
  return 3 * known + new Set(texts).size - 2 * others + Math.min(filledBelow, texts.length);
}

/** Which of a sheet's rows, counted from 0, is most like headings: texts that the trade writes over columns, with cells beneath. */
export function proposeHeadingRow(values: readonly (readonly unknown[])[]): number {
  const scores = values.slice(0, rowsLookedAt).map((row, index) => likeness(row, values[index + 1] ?? []));
  return Math.max(0, scores.indexOf(Math.max(...scores)));
}

/** The headings with the units that stand in a row of their own beneath: "Temp" over "°F" is "Temp, °F". */
function withUnits(headings: readonly string[], units: readonly unknown[]): readonly string[] {
  const width = Math.max(headings.length, units.length);
  return Array.from({ length: width }, (_, at) => {
    const [heading, unit] = [headings[at] ?? "", bareUnit(units[at])];
    return unit === "" || heading === "" ? heading + unit : `${heading}, ${unit}`;
  });
}

/** The sheet below one of its rows; rows without anything in them are no rows. */
export function tableBelow({ values, firstRow }: SheetReading, headingRow: number): SheetTable {
  const headings = (values[headingRow] ?? []).map(cellWords);
  const beneath = values[headingRow + 1] ?? [];
  const unitsBeneath = isUnitRow(beneath);
  const first = headingRow + (unitsBeneath ? 2 : 1);
  return {
    headings: unitsBeneath ? withUnits(headings, beneath) : headings,
    rows: values
      .slice(first)
      .flatMap((cells, index) => (cells.every(isBlankCell) ? [] : [{ number: firstRow + first + index, cells }])),
  };
}
