import type { AreaPlan } from "../model/plan.ts";

/** Column letters of a column counted from 0. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** A cell as a rule's formula names it: `$P6`, the column held, the row relative. Counted from 0. */
export function columnHeld(row: number, column: number): string {
  return `$${columnLetters(column)}${String(row + 1)}`;
}

/** `P6` of a cell counted from 0. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${String(row + 1)}`;
}

/** `A1:C9` of an area counted from 0. */
export function areaAddress({ row, column, rows, columns }: AreaPlan): string {
  return `${cellAddress(row, column)}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}

function absolute(row: number, column: number): string {
  return `$${columnLetters(column)}$${String(row + 1)}`;
}

function sheetPrefix(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'!`;
}

/** `'Bench tests'!$A$6:$A$25`, as another sheet names the area. */
export function absoluteArea(sheet: string, { row, column, rows, columns }: AreaPlan): string {
  return `${sheetPrefix(sheet)}${absolute(row, column)}:${absolute(row + rows - 1, column + columns - 1)}`;
}

/** `'Job'!$C$7` of one cell. */
export function absoluteCell(sheet: string, row: number, column: number): string {
  return sheetPrefix(sheet) + absolute(row, column);
}
