import type { Cell } from "../address.ts";
import { type Grid, positionOf } from "./grid/grid.ts";
import { setFormat } from "./text-format.ts";

/** Gives a cell the style, border and number format of another; with `keepStyle` its own style stays where it has one. */
export function copyLook(grid: Grid, from: Cell, to: Cell, keepStyle = false): void {
  const { getters } = grid.model;
  const source = getters.getCell(positionOf(from));
  const target = getters.getCell(positionOf(to));
  const area = { sheet: to.sheet, row: to.row, column: to.column, rows: 1, columns: 1 };
  if (source?.style !== undefined && !(keepStyle && target?.style !== undefined)) grid.look(area, source.style);
  const border = getters.getCellBorder(positionOf(from));
  if (border !== null) grid.do("SET_BORDER", { ...positionOf(to), border });
  // A format that the grid derived from a typed date yields to the source's own.
  if (source?.format !== undefined) setFormat(grid, area, source.format);
}
