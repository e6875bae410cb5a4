/** Column letters of a column counted from 0. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** A cell as a rule's formula names it: `$P6`, the column held, the row relative. Counted from 0. */
export function columnHeld(row: number, column: number): string {
  return `$${columnLetters(column)}${String(row + 1)}`;
}
