/**
 * What a write puts where, as plain data: two plans are the same where they read the same, and the ranges are found
 * anew in any request context, from the tables as they are when the batch runs.
 */
import type { RowValue } from "../../joblog/model/definition.ts";
import { cellValue } from "../cell-text.ts";

/** A cell that people type into; undefined is blank. Where both are the same, it is looked at and not written. */
export interface TypedCell {
  readonly was: RowValue | undefined;
  readonly becomes: RowValue | undefined;
}

/** A computed cell by its formula; undefined where that is copied from the first row of the entry. */
interface ComputedCell {
  readonly formula: string | undefined;
}

/** A computed cell that holds its formula or, for good, the value that it shows; undefined is blank. */
export interface SettledCell {
  readonly formula: string;
  readonly value: RowValue | undefined;
  readonly before: "formula" | "value";
  readonly after: "formula" | "value";
}

/** `null` is a cell that is let alone. */
export type PlannedCell = TypedCell | ComputedCell | SettledCell | null;

interface RowPlace {
  readonly table: string;
  /** Counts the table's data rows from 0; may lie beneath its end. */
  readonly position: number;
  /** The first cell, counted from the table's first column. */
  readonly at: number;
}

interface NamePlace {
  readonly name: string;
}

/** Cells of one row, or of rows one beneath the other, that are written in one step. */
export interface CellWrite {
  readonly place: RowPlace | NamePlace;
  readonly lines: readonly (readonly PlannedCell[])[];
  /** The sheet by name, for people. */
  readonly sheet: string;
}

/** A table that becomes longer, or shorter by its last rows. */
export interface SizeChange {
  readonly table: string;
  readonly sheet: string;
  /** Data rows before. */
  readonly rowCount: number;
  readonly extra: number;
  /** Where in the table the columns stand that people type into, and those that are computed. */
  readonly inputs: readonly number[];
  readonly computed: readonly number[];
}

/** Rows that take the formulas of the row above them. */
export interface FormulaCopy {
  readonly table: string;
  /** The row that has them. */
  readonly position: number;
  readonly rows: number;
  readonly computed: readonly number[];
}

export interface WritePlan {
  readonly sizes: readonly SizeChange[];
  readonly writes: readonly CellWrite[];
  readonly copies: readonly FormulaCopy[];
}

export const isTyped = (cell: PlannedCell): cell is TypedCell => cell !== null && "becomes" in cell;

export const isSettled = (cell: PlannedCell): cell is SettledCell => cell !== null && "before" in cell;

export function isWritten(cell: PlannedCell): boolean {
  if (isSettled(cell)) return cell.before !== cell.after;
  return cell !== null && (!isTyped(cell) || cell.was !== cell.becomes);
}

/** Such a cell as `Range.formulas` takes it. */
export function settledContent({ formula, value }: SettledCell, held: SettledCell["after"]): RowValue {
  if (held === "formula") return formula;
  return value === undefined ? "" : cellValue(value);
}

/** One step for some cells of rows from `position` on, with what lies between them let alone. */
export function rowsWrite(
  sheet: string,
  { table, position }: Omit<RowPlace, "at">,
  rows: readonly ReadonlyMap<number, PlannedCell>[],
): CellWrite {
  const places = rows.flatMap((cells) => [...cells.keys()]);
  const at = Math.min(...places);
  const width = Math.max(...places) - at + 1;
  return {
    sheet,
    place: { table, position, at },
    lines: rows.map((cells) => Array.from({ length: width }, (_, index) => cells.get(at + index) ?? null)),
  };
}

export const bodyOf = (workbook: Excel.Workbook, table: string): Excel.Range =>
  workbook.tables.getItem(table).getDataBodyRange();

/** Some cells of a table, by data row and column. */
export function cellsAt(
  body: Excel.Range,
  { position, at }: Omit<RowPlace, "table">,
  rows: number,
  columns: number,
): Excel.Range {
  return body
    .getCell(0, 0)
    .getOffsetRange(position, at)
    .getResizedRange(rows - 1, columns - 1);
}

export function rangeOf(workbook: Excel.Workbook, { place, lines }: CellWrite): Excel.Range {
  if ("name" in place) return workbook.names.getItem(place.name).getRange().getCell(0, 0);
  return cellsAt(bodyOf(workbook, place.table), place, lines.length, lines[0]?.length ?? 1);
}

/** What goes into a cell as `Range.formulas` takes it. */
function contentOf(cell: PlannedCell): RowValue | null {
  if (cell === null || !isWritten(cell)) return null;
  if (isSettled(cell)) return settledContent(cell, cell.after);
  if (!isTyped(cell)) return cell.formula ?? null;
  return cell.becomes === undefined ? "" : cellValue(cell.becomes);
}

export function carryOut(workbook: Excel.Workbook, write: CellWrite): void {
  rangeOf(workbook, write).formulas = write.lines.map((line) => line.map(contentOf));
}

/** Places that stand side by side, as first place and count. */
function runsOf(places: readonly number[]): readonly { readonly at: number; readonly count: number }[] {
  const runs: { at: number; count: number }[] = [];
  for (const at of places) {
    const last = runs.at(-1);
    if (last !== undefined && last.at + last.count === at) last.count += 1;
    else runs.push({ at, count: 1 });
  }
  return runs;
}

export function copyFormulas(workbook: Excel.Workbook, { table, position, rows, computed }: FormulaCopy): void {
  const body = bodyOf(workbook, table);
  for (const { at, count } of runsOf(computed))
    cellsAt(body, { position: position + 1, at }, rows, count).copyFrom(
      cellsAt(body, { position, at }, 1, count),
      "Formulas",
    );
}
