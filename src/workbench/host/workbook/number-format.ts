import type { Area } from "../address.ts";
import type { FormatSpelling } from "./format-spelling.ts";
import { type Grid, positionOf } from "./grid/grid.ts";
import { setFormat } from "./text-format.ts";

/** Number formats of cells, in and out by Excel's text. */
export class NumberFormats {
  readonly spelling: FormatSpelling;
  private readonly grid: Grid;

  constructor(spelling: FormatSpelling, grid: Grid) {
    this.spelling = spelling;
    this.grid = grid;
  }

  read(sheet: string, row: number, column: number): string {
    const format = this.grid.model.getters.getCell(positionOf({ sheet, row, column }))?.format ?? "";
    return format === "" ? "General" : this.spelling.inExcel(format);
  }

  /** Writes a format to every cell: one command where all are alike, else one for each run in a column. */
  write(area: Area, formats: readonly (readonly (string | null)[])[]): void {
    this.grid.makeRoom(area);
    const distinct = new Set(formats.flat());
    const [only] = distinct;
    if (distinct.size === 1 && only !== undefined && only !== null) {
      this.set(area, only);
      return;
    }
    for (let column = 0; column < area.columns; column += 1) {
      let start = 0;
      for (let row = 1; row <= area.rows; row += 1) {
        const format = formats[start]?.[column] ?? null;
        if (row < area.rows && (formats[row]?.[column] ?? null) === format) continue;
        if (format !== null)
          this.set(
            { ...area, row: area.row + start, column: area.column + column, rows: row - start, columns: 1 },
            format,
          );
        start = row;
      }
    }
  }

  private set(area: Area, format: string): void {
    setFormat(this.grid, area, this.spelling.inGrid(format));
  }
}
