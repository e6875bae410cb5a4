import { type Area, parseLocalAddress, splitAddress } from "../address.ts";
import type { Grid } from "./grid/grid.ts";

/** A range that ended with a table's former last row, reaching down to its new one; undefined where it did not. `home` is the sheet of a range that names none. */
export function stretchedRange(
  grid: Grid,
  range: string,
  table: Area,
  formerRows: number,
  home: string,
): Area | undefined {
  const { sheetName, local } = splitAddress(range);
  const sheet = sheetName === undefined ? home : grid.model.getters.getSheetIdByName(sheetName);
  if (sheet !== table.sheet) return undefined;
  const area = parseLocalAddress(local, grid.sizeOf(sheet));
  const inside =
    area !== undefined &&
    area.column >= table.column &&
    area.column + area.columns <= table.column + table.columns &&
    area.row > table.row;
  return inside && area.row + area.rows === table.row + formerRows
    ? { sheet, ...area, rows: table.row + table.rows - area.row }
    : undefined;
}
