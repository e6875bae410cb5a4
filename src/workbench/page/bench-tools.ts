import { type Cell, splitAddress } from "../host/address.ts";
import type { Host } from "../host/create-host.ts";
import type { CellValue } from "../host/workbook/cells.ts";
import { positionOf } from "../host/workbook/grid/grid.ts";

/** `window.bathsheetWorkbench`: how browser tests look into the grid, which is drawn on a canvas. Not for the add-in. */
export interface BenchTools {
  /** Settles when grid and pane frame are up. */
  readonly ready: Promise<void>;
  /** Settles when every function has answered. */
  readonly answered: () => Promise<void>;
  /** Each takes an address such as `Readings!E7`. */
  readonly value: (address: string) => CellValue;
  readonly formula: (address: string) => CellValue;
  readonly displayed: (address: string) => string;
  /** What hovering over an error says. */
  readonly tooltip: (address: string) => string | undefined;
  /** Enters content as a person types it. */
  readonly setCell: (address: string, content: string) => void;
  readonly select: (address: string) => void;
  readonly tables: () => readonly {
    readonly name: string;
    readonly address: string;
    readonly headers: readonly string[];
  }[];
  readonly sheets: () => readonly string[];
  readonly save: () => unknown;
}

export function benchTools(host: Host, ready: Promise<void>): BenchTools {
  const cellAt = (address: string): Cell => {
    const { workbook } = host;
    if (splitAddress(address).sheetName === undefined) throw new RangeError(`Say the sheet too: Readings!${address}.`);
    return workbook.cellAt(workbook.area(address, workbook.grid.model.getters.getActiveSheetId()));
  };
  return {
    ready,
    answered: () => host.workbook.answers.complete(),
    value: (address) => host.workbook.cells.value(cellAt(address)),
    formula: (address) => host.workbook.cells.formula(cellAt(address)),
    displayed: (address) => host.workbook.cells.displayed(cellAt(address)),
    tooltip: (address) => host.workbook.cells.tooltip(cellAt(address)),
    setCell: (address, content) => {
      host.workbook.grid.do("UPDATE_CELL", { ...positionOf(cellAt(address)), content });
    },
    select: (address) => {
      host.workbook.select({ ...cellAt(address), rows: 1, columns: 1 });
    },
    tables: () =>
      host.workbook.tables.list().map(({ name, area, headers }) => ({
        name,
        address: host.workbook.fixedAddressOf(area),
        headers: [...headers],
      })),
    sheets: () => host.workbook.sheets.ids().map((sheet) => host.workbook.sheets.nameOf(sheet)),
    save: () => host.save(),
  };
}
