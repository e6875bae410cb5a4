import type { CellPosition, Model } from "../host/library.ts";

/** What is used of the grid's editor of cells. */
export interface CellEditor {
  readonly editionMode: string;
  readonly currentEditedCell: CellPosition;
  /** Ends the editing of a cell by writing what was typed. */
  confirmEdition: (content: string) => void;
}

/** Opens the editor of the active cell with that content. */
export type EditAgain = (content: string) => void;

/**
 * Refuses formulas that Excel would not take: `say` is given why and, as what follows, the cell with all that was typed,
 * open for another try. `fault` says why one is refused.
 */
export function refuseFaultyFormulas(
  editor: CellEditor,
  model: Model,
  fault: (sheet: string, content: string) => string | undefined,
  say: (text: string, then: () => void) => void,
  editAgain: EditAgain,
): void {
  const confirm = editor.confirmEdition.bind(editor);
  editor.confirmEdition = (content): void => {
    const cell = editor.currentEditedCell;
    const why = fault(cell.sheetId, content);
    if (why === undefined) {
      confirm(content);
      return;
    }
    say(`${why} Complete it, or press Esc to leave the cell as it was.`, () => {
      const active = model.getters.getActiveSheetId();
      if (active !== cell.sheetId) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: active, sheetIdTo: cell.sheetId });
      model.selection.selectCell(cell.col, cell.row);
      editAgain(content);
    });
  };
}
