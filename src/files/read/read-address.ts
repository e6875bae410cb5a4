import type { AreaPlan } from "../../joblog/model/plan.ts";

/** What is opened of a sheet; a grid in a page cannot hold all that Excel's can, and no log comes near. */
export const openLimits = { rows: 20_000, columns: 500, cells: 500_000 } as const;

/** A column counted from 0 by its letters. */
export function columnOf(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

export function lettersOf(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : lettersOf(Math.floor(column / 26) - 1) + last;
}

const cornerShape = /^\$?([A-Za-z]{1,3})?\$?([1-9]\d{0,6})?$/;

/** A cell counted from 0, or undefined where the text names none. */
export function readCell(text: string): { readonly row: number; readonly column: number } | undefined {
  const [, letters, digits] = cornerShape.exec(text) ?? [];
  return letters === undefined || digits === undefined
    ? undefined
    : { row: Number(digits) - 1, column: columnOf(letters) };
}

/** `A1`, `A1:C9`, `A:C` or `1:3`, dollar signs allowed, whole rows and columns as far as sheets are opened; undefined where the text is none or lies beyond. */
export function readArea(text: string): AreaPlan | undefined {
  const [from = "", to = from, ...more] = text.trim().split(":");
  const [, fromLetters, fromDigits] = cornerShape.exec(from) ?? [];
  const [, toLetters, toDigits] = cornerShape.exec(to) ?? [];
  const single = !text.includes(":");
  if (more.length > 0 || (single && (fromLetters === undefined || fromDigits === undefined))) return undefined;
  if ((fromLetters === undefined) !== (toLetters === undefined)) return undefined;
  if ((fromDigits === undefined) !== (toDigits === undefined)) return undefined;
  if (fromLetters === undefined && fromDigits === undefined) return undefined;
  const between = (a: number, b: number, limit: number): readonly [number, number] => [
    Math.min(a, b),
    Math.min(Math.max(a, b), limit - 1),
  ];
  const [left, right] =
    fromLetters === undefined || toLetters === undefined
      ? [0, openLimits.columns - 1]
      : between(columnOf(fromLetters), columnOf(toLetters), openLimits.columns);
  const [top, bottom] =
    fromDigits === undefined || toDigits === undefined
      ? [0, openLimits.rows - 1]
      : between(Number(fromDigits) - 1, Number(toDigits) - 1, openLimits.rows);
  if (bottom < top || right < left) return undefined;
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/** `A1` or `A1:C9`, with dollar signs where it is to be `fixed`. */
export function areaText({ row, column, rows, columns }: AreaPlan, fixed = false): string {
  const dollar = fixed ? "$" : "";
  const corner = (atRow: number, atColumn: number): string =>
    `${dollar}${lettersOf(atColumn)}${dollar}${String(atRow + 1)}`;
  const first = corner(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${corner(row + rows - 1, column + columns - 1)}`;
}

/** A sheet's name before a reference, in quotes where Excel wants them. */
export function sheetPrefix(name: string): string {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name)
    ? `${name}!`
    : `'${name.replaceAll("'", "''")}'!`;
}

/** Areas of a list with blanks between, as rules name them. */
export function readAreas(text: string | undefined): readonly AreaPlan[] {
  return (text ?? "").split(/\s+/).flatMap((one) => {
    const area = one === "" ? undefined : readArea(one);
    return area === undefined ? [] : [area];
  });
}

/** Splits `'Bench tests'!$A$1:$B$2` into the sheet's name and the rest. */
export function splitSheet(text: string): { readonly sheet: string | undefined; readonly local: string } {
  const bang = text.lastIndexOf("!");
  if (bang < 0) return { sheet: undefined, local: text };
  const name = text.slice(0, bang);
  return {
    sheet: name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name,
    local: text.slice(bang + 1),
  };
}
