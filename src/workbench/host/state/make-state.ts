import type { WorkbookData } from "@odoo/o-spreadsheet";

import type { BookState, NameState, SheetState, WorkbookState } from "../../../state/workbook-state.ts";
import { stateVersion } from "../../../state/workbook-state.ts";
import type { Workbook } from "../workbook/workbook.ts";
import { gridDataWithoutCells } from "./grid-data.ts";
import { sheetState } from "./sheet-state.ts";

function namesOf({ names }: Workbook, grid: WorkbookData): readonly NameState[] {
  const areas = Object.entries(grid.namedRanges).map(([name, refersTo]): NameState => {
    const comment = names.comments.get(name.toLowerCase());
    return { name, refersTo, ...(comment === undefined ? {} : { comment }) };
  });
  return [...areas, ...names.beyondGrid];
}

const usualLocale = "en_US";

function othersOf({ pivots, pivotNextId, customTableStyles, settings }: WorkbookData): Pick<BookState, "others"> {
  const others = {
    ...(Object.keys(pivots).length === 0 ? {} : { pivots, pivotNextId }),
    ...(Object.keys(customTableStyles).length === 0 ? {} : { customTableStyles }),
    ...(settings.locale.code === usualLocale ? {} : { settings }),
  };
  return Object.keys(others).length === 0 ? {} : { others: structuredClone(others) };
}

/** The state of a workbook, each sheet made when it is asked for. */
export interface StateInParts {
  readonly book: BookState;
  readonly sheet: (id: string) => SheetState;
}

export function stateInParts(workbook: Workbook): StateInParts {
  const { model } = workbook.grid;
  const grid = gridDataWithoutCells(workbook.library, model);
  return {
    book: {
      version: stateVersion,
      order: grid.sheets.map(({ id }) => id),
      activeSheet: model.getters.getActiveSheetId(),
      names: namesOf(workbook, grid),
      ...othersOf(grid),
    },
    sheet: (id) => {
      const data = grid.sheets.find((sheet) => sheet.id === id);
      if (data === undefined) throw new RangeError(`There is no sheet ${id}.`);
      return sheetState(workbook, data);
    },
  };
}

export function workbookState(workbook: Workbook): WorkbookState {
  const { book, sheet } = stateInParts(workbook);
  return { book, sheets: book.order.map(sheet) };
}
