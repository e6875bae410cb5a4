import { columnOf, lettersOf } from "../read-address.ts";
import { withCode } from "./formula-pieces.ts";

/** Excel's grid: a reference that is moved over its edge comes in again at the other. */
const rows = 1_048_576;
const columns = 16_384;

/** Columns, rows and cells, each part with or without a dollar sign; no function, name or number such as 1E5. */
const reference =
  /(?<![\w.$])(?:(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})|(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})|(\$?)([1-9]\d{0,6}):(\$?)([1-9]\d{0,6}))(?![\w(.!])/g;

function wrapped(number: number, size: number): number {
  return ((number % size) + size) % size;
}

/** A shared formula, which stands in its first cell, as another cell so many rows and columns on has it. */
export function movedFormula(formula: string, down: number, right: number): string {
  const column = (dollar: string, letters: string): string =>
    dollar === "$" ? `$${letters}` : lettersOf(wrapped(columnOf(letters) + right, columns));
  const row = (dollar: string, digits: string): string =>
    dollar === "$" ? `$${digits}` : String(wrapped(Number(digits) - 1 + down, rows) + 1);
  return withCode(formula, (code) =>
    code.replace(reference, (text, ...found: (string | undefined)[]) => {
      const [cd, c, rd, r, fd, f, td, t, ud, u, ld, l] = found;
      if (c !== undefined && r !== undefined) return column(cd ?? "", c) + row(rd ?? "", r);
      if (f !== undefined && t !== undefined) return `${column(fd ?? "", f)}:${column(td ?? "", t)}`;
      if (u !== undefined && l !== undefined) return `${row(ud ?? "", u)}:${row(ld ?? "", l)}`;
      return text;
    }),
  );
}
