/**
 * Cells of the format "Text" (@). Excel and the grid agree that they hold what was typed; but the grid
 * shows the quote mark of a quoted text there, so such text is stored without it.
 */
import type { Area, Cell } from "../address.ts";
import { type Grid, positionOf, zoneOf } from "./grid/grid.ts";

export function isTextFormat(format: string | undefined): boolean {
  return format === "@";
}

/** Text that must keep its quote mark, as the grid would take it for a formula or swallow its own mark. */
const needsQuote = /^[='+-]/;

/** What to store for a literal in a text cell. A text that needs its quote mark gives up the cell's format instead. */
export function textCellContent(literal: string): { readonly content: string; readonly format?: "" } {
  const text = literal.startsWith("'") ? literal.slice(1) : literal;
  return /^[=']/.test(text) ? { content: `'${text}`, format: "" } : { content: text };
}

function literalOf(
  grid: Grid,
  cell: Cell,
): { readonly content: string; readonly format: string | undefined } | undefined {
  const stored = grid.model.getters.getCell(positionOf(cell));
  return stored === undefined || stored.isFormula || stored.content === ""
    ? undefined
    : { content: stored.content, format: stored.format };
}

/** Gives an area a format; text stays the text it was, on the way into the text format and out of it. */
export function setFormat(grid: Grid, area: Area, format: string): void {
  const cells = Array.from({ length: area.rows * area.columns }, (_, index): Cell => ({
    sheet: area.sheet,
    row: area.row + Math.floor(index / area.columns),
    column: area.column + (index % area.columns),
  }));
  const before = cells.map((cell) => literalOf(grid, cell));
  grid.do("SET_FORMATTING", { sheetId: area.sheet, target: [zoneOf(area)], format });
  cells.forEach((cell, index) => {
    const literal = before[index];
    if (literal === undefined) return;
    const was = isTextFormat(literal.format);
    if (isTextFormat(format) && !was && literal.content.startsWith("'"))
      grid.do("UPDATE_CELL", { ...positionOf(cell), ...textCellContent(literal.content) });
    if (!isTextFormat(format) && was && (needsQuote.test(literal.content) || !Number.isNaN(Number(literal.content))))
      grid.do("UPDATE_CELL", { ...positionOf(cell), content: `'${literal.content}` });
  });
}
