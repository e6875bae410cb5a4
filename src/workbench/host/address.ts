/** A rectangle of cells counted from 0 on one sheet, known by the grid's sheet id. */
export interface Area {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface Cell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Excel's grid: rows, then columns. */
export const excelSize = { rows: 1_048_576, columns: 16_384 };

export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

function columnOf(letters: string): number {
  return Array.from(letters.toUpperCase()).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** `A1` or `A1:C9`. */
export function areaText(area: Omit<Area, "sheet">, fixed = false): string {
  const dollar = fixed ? "$" : "";
  const corner = (row: number, column: number): string => `${dollar}${columnLetters(column)}${dollar}${row + 1}`;
  const first = corner(area.row, area.column);
  if (area.rows === 1 && area.columns === 1) return first;
  return `${first}:${corner(area.row + area.rows - 1, area.column + area.columns - 1)}`;
}

/** A sheet's name as a formula writes it. */
export function sheetPrefix(name: string): string {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name)
    ? `${name}!`
    : `'${name.replaceAll("'", "''")}'!`;
}

/** Splits `'Bench tests'!A1:B2` into sheet name and address. */
export function splitAddress(text: string): { readonly sheetName: string | undefined; readonly local: string } {
  const bang = text.lastIndexOf("!");
  if (bang < 0) return { sheetName: undefined, local: text };
  const name = text.slice(0, bang);
  return {
    sheetName: name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name,
    local: text.slice(bang + 1),
  };
}

const reference = /^(?:([A-Z]{1,3})([1-9]\d{0,6})?|([1-9]\d{0,6}))$/i;

interface Corner {
  readonly row: number | undefined;
  readonly column: number | undefined;
}

function corner(text: string): Corner | undefined {
  const match = reference.exec(text);
  if (match === null) return undefined;
  const [, letters, rowAfterLetters, rowAlone] = match;
  const row = rowAfterLetters ?? rowAlone;
  return {
    column: letters === undefined ? undefined : columnOf(letters),
    row: row === undefined ? undefined : Number(row) - 1,
  };
}

/** The rectangle of `B2`, `A1:C9`, `A:C` or `1:3` (dollar signs allowed), or undefined where the text is none. */
export function parseLocalAddress(
  text: string,
  size: { rows: number; columns: number },
): Omit<Area, "sheet"> | undefined {
  const [from = "", to = from, ...more] = text.replaceAll("$", "").trim().split(":");
  const first = corner(from);
  const last = corner(to);
  if (first === undefined || last === undefined || more.length > 0) return undefined;
  const single = !text.includes(":");
  if (single && (first.row === undefined || first.column === undefined)) return undefined;
  if (
    (first.row === undefined) !== (last.row === undefined) ||
    (first.column === undefined) !== (last.column === undefined)
  )
    return undefined;
  const top = Math.min(first.row ?? 0, last.row ?? 0);
  const bottom = Math.max(first.row ?? size.rows - 1, last.row ?? size.rows - 1);
  const left = Math.min(first.column ?? 0, last.column ?? 0);
  const right = Math.max(first.column ?? size.columns - 1, last.column ?? size.columns - 1);
  if (bottom >= excelSize.rows || right >= excelSize.columns) return undefined;
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/** Whether a cell lies in an area. */
export function contains(area: Area, cell: Cell): boolean {
  return (
    cell.sheet === area.sheet &&
    cell.row >= area.row &&
    cell.row < area.row + area.rows &&
    cell.column >= area.column &&
    cell.column < area.column + area.columns
  );
}

/** Whether two areas share a cell. */
export function overlap(a: Area, b: Area): boolean {
  return (
    a.sheet === b.sheet &&
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  );
}
