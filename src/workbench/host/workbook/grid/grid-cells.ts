import type { CellPosition, OSpreadsheet } from "../../library.ts";

interface StoredCell {
  readonly id: number;
  readonly isFormula: boolean;
  readonly style?: object | undefined;
  readonly format?: string | undefined;
}

interface CellWrite {
  readonly content?: string;
  readonly style?: object | null;
  readonly format?: string;
}

/** What the grid's own handling of cells does that is private to it by its types. */
interface CellsOfTheGrid {
  readonly getters: { readonly getCell: (position: CellPosition) => StoredCell | undefined };
  readonly history: { readonly update: (key: "cells", sheet: string, id: number, cell: object) => void };
  dispatch: (type: string, payload?: Partial<CellPosition> & { readonly cellId?: number }) => unknown;
  updateCell: (sheet: string, column: number, row: number, write: CellWrite) => void;
}

const prepared = new WeakSet<object>();

/**
 * Spares the grid two needless works at every cell write. It tells every part of itself where a cell stands, also where
 * the cell stood there before. And to give a formula's cell a look it writes the formula out and reads it in again.
 * Safe to repeat.
 */
export function spareNeedlessCellWork(library: OSpreadsheet): void {
  const plugins = library.registries.corePluginRegistry;
  const Cells = plugins.get("cell");
  if (prepared.has(Cells)) return;
  class SparingCells extends Cells {
    constructor(config: ConstructorParameters<typeof Cells>[0]) {
      super(config);
      const cells = this as unknown as CellsOfTheGrid;
      const { getters, history, dispatch } = cells;
      const updateCell = cells.updateCell.bind(this);
      cells.dispatch = (type, payload) => {
        const { cellId, sheetId, row, col } = payload ?? {};
        const stands =
          type === "UPDATE_CELL_POSITION" &&
          cellId !== undefined &&
          sheetId !== undefined &&
          row !== undefined &&
          col !== undefined &&
          getters.getCell({ sheetId, row, col })?.id === cellId;
        return stands ? library.DispatchResult.Success : dispatch(type, payload);
      };
      cells.updateCell = (sheetId, col, row, write) => {
        const cell = getters.getCell({ sheetId, row, col });
        if (cell?.isFormula !== true || write.content !== undefined || "formula" in write) {
          updateCell(sheetId, col, row, write);
          return;
        }
        const style = write.style === undefined ? cell.style : (write.style ?? undefined);
        const format = write.format === undefined ? cell.format : write.format;
        history.update("cells", sheetId, cell.id, { ...cell, style, format });
      };
    }
  }
  prepared.add(SparingCells);
  plugins.replace("cell", SparingCells);
}
