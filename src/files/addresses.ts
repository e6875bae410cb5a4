import { columnLetters } from "../joblog/addresses.ts";
import type { AreaPlan } from "../joblog/plan.ts";

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

/** `'Bench tests'!$A$6:$A$25`, as another sheet names the area. */
export function absoluteArea(sheet: string, { row, column, rows, columns }: AreaPlan): string {
  return `'${sheet.replaceAll("'", "''")}'!${absolute(row, column)}:${absolute(row + rows - 1, column + columns - 1)}`;
}

/** `'Job'!$C$7` of one cell. */
export function absoluteCell(sheet: string, row: number, column: number): string {
  return `'${sheet.replaceAll("'", "''")}'!${absolute(row, column)}`;
}
