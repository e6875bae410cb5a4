import type { AreaPlan } from "../joblog/plan.ts";

/** Column letters of a column counted from 0. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** `A1:C9` of an area counted from 0. */
export function areaAddress({ row, column, rows, columns }: AreaPlan): string {
  return `${columnLetters(column)}${String(row + 1)}:${columnLetters(column + columns - 1)}${String(row + rows)}`;
}

/** `'Bench tests'!$A$6:$A$25`, as a formula names it from another sheet. */
export function absoluteArea(sheet: string, { row, column, rows, columns }: AreaPlan): string {
  const first = `$${columnLetters(column)}$${String(row + 1)}`;
  const last = `$${columnLetters(column + columns - 1)}$${String(row + rows)}`;
  return `'${sheet.replaceAll("'", "''")}'!${first}:${last}`;
}
