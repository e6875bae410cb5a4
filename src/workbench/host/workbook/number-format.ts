import type { Area } from "../address.ts";
import type { OSpreadsheet } from "../library.ts";
import { type Grid, positionOf } from "./grid.ts";
import { setFormat } from "./text-format.ts";

/** Colours and conditions in square brackets, which the grid does not read; elapsed time such as [h] stays. */
const colorOrCondition = /\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi;

/** Space as wide as a character (`_)`), which the grid does not read. */
const spaceLikeCharacter = /_./g;

function generalIsBlank(format: string): string {
  return format.trim().toLowerCase() === "general" ? "" : format;
}

/** Excel number formats in the grid's spelling, simplified where the grid lacks something. */
export class NumberFormats {
  private readonly library: OSpreadsheet;
  private readonly grid: Grid;
  /** Excel's text by the grid's, for reading back what was written. */
  readonly originals = new Map<string, string>();
  private readonly known = new Map<string, string>();

  constructor(library: OSpreadsheet, grid: Grid) {
    this.library = library;
    this.grid = grid;
  }

  private readable(format: string): boolean {
    try {
      for (const value of [1234.5, -1, 0])
        this.library.helpers.formatValue(value, { format, locale: this.library.DEFAULT_LOCALE });
      return true;
    } catch {
      // The grid's parser throws for what it cannot read; the caller then tries a simpler format.
      return false;
    }
  }

  /** The nearest format that the grid can draw; "" is General. */
  inGrid(format: string): string {
    const known = this.known.get(format);
    if (known !== undefined) return known;
    const plain = format.replace(colorOrCondition, "").replace(spaceLikeCharacter, "");
    const candidates = [generalIsBlank(format), generalIsBlank(plain), generalIsBlank(plain.split(";")[0] ?? "")];
    const chosen = candidates.find((candidate) => candidate === "" || this.readable(candidate)) ?? "";
    this.known.set(format, chosen);
    if (chosen !== format && chosen !== "") this.originals.set(chosen, format);
    return chosen;
  }

  read(sheet: string, row: number, column: number): string {
    const format = this.grid.model.getters.getCell(positionOf({ sheet, row, column }))?.format ?? "";
    return format === "" ? "General" : (this.originals.get(format) ?? format);
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
    setFormat(this.grid, area, this.inGrid(format));
  }
}
