import type { Area, Cell } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import type { WrittenValue } from "../../workbook/cells.ts";
import type { Habits } from "../../workbook/habits.ts";

/** The cells of an area, row by row. */
export function mapArea<Value>(area: Area, read: (cell: Cell) => Value): Value[][] {
  return Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_unused, column) =>
      read({ sheet: area.sheet, row: area.row + row, column: area.column + column }),
    ),
  );
}

/** One value for a range as the workbook's habit takes it; rows of cells as they are. Throws InvalidArgument. */
export function spread(value: unknown, area: Area, { oneValue }: Habits): unknown {
  if (Array.isArray(value) || (area.rows === 1 && area.columns === 1)) return value;
  if (oneValue === "is refused") throw invalidArgument("A range of several cells takes rows of values.");
  return oneValue === "fills every cell"
    ? value
    : mapArea(area, ({ row, column }) => (row === area.row && column === area.column ? value : null));
}

/** What was assigned, as rows of the area's shape; a single value stands for every cell. Throws InvalidArgument. */
export function checkedMatrix(value: unknown, area: Area, location: string): readonly (readonly unknown[])[] {
  if (!Array.isArray(value)) return mapArea(area, () => value);
  const lines = value as readonly unknown[];
  const wrong =
    lines.length !== area.rows || lines.some((line) => !Array.isArray(line) || line.length !== area.columns);
  if (wrong) {
    const first: unknown = lines[0];
    const given = `${lines.length} by ${Array.isArray(first) ? first.length : "none"}`;
    throw invalidArgument(
      `The number of rows or columns in the input array (${given}) doesn't match the size of the range (${area.rows} by ${area.columns}).`,
      location,
    );
  }
  return lines as readonly (readonly unknown[])[];
}

export function cellsOf(
  area: Area,
  matrix: readonly (readonly unknown[])[],
  location: string,
): readonly { readonly cell: Cell; readonly written: WrittenValue }[] {
  return matrix.flatMap((line, row) =>
    line.map((written, column) => {
      if (
        written !== null &&
        written !== undefined &&
        typeof written !== "string" &&
        typeof written !== "number" &&
        typeof written !== "boolean"
      ) {
        throw invalidArgument(
          `A cell holds text, a number or true/false, not ${Object.prototype.toString.call(written)}.`,
          location,
        );
      }
      return { cell: { sheet: area.sheet, row: area.row + row, column: area.column + column }, written };
    }),
  );
}
