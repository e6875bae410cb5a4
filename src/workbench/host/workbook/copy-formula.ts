import type { Cell } from "../address.ts";
import { positionOf } from "./grid/grid.ts";
import type { Workbook } from "./workbook.ts";

/** Gives a cell what another holds: a formula moved along by its relative references, or the value. */
export function copyFormula({ formulas, cells, grid, library }: Workbook, from: Cell, to: Cell): void {
  const text = formulas.read(from);
  if (text === undefined) {
    const value = cells.value(from);
    if (value === "") grid.do("UPDATE_CELL", { ...positionOf(to), content: "" });
    else cells.write(to, typeof value === "string" ? `'${value}` : value);
    return;
  }
  const { getters } = grid.model;
  // A text of its own is one with structured references, which mean the same in every row.
  const moves = text === formulas.gridText(from);
  const compiled = moves ? library.CompiledFormula.Compile(text, from.sheet, getters) : undefined;
  formulas.write(
    to,
    compiled === undefined
      ? text
      : getters.getTranslatedCellFormula(to.sheet, to.column - from.column, to.row - from.row, compiled),
  );
}
