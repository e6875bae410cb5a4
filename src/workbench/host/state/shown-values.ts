import type { ShownSheet, ShownValues } from "../../../files/write/known-values.ts";
import type { SheetState, StateValue, WorkbookState } from "../../../state/workbook-state.ts";
import { areaText, type Cell, sheetPrefix } from "../address.ts";
import { positionOf } from "../workbook/grid/grid.ts";
import type { Workbook } from "../workbook/workbook.ts";

/** A cell whose function has not answered: saved, its stopgap would stand for a figure. */
export class NotWorkedOut extends Error {
  constructor(readonly place: string) {
    super(`${place} is not worked out yet.`);
  }
}

/** The height in pixels of the grid's rows of one line. */
const usualRow = 23;

const waiting = new Set(["#BUSY!", "Loading..."]);

function shownValue(workbook: Workbook, cell: Cell): StateValue {
  const evaluated = workbook.grid.model.getters.getEvaluatedCell(positionOf(cell));
  const kind: string = evaluated.type;
  if (kind !== "error") return evaluated.value ?? "";
  return { error: workbook.cells.excelError(String(evaluated.value)) };
}

/** The add-in's functions say so while they load; any other function of that answer is unknown to the grid. */
function isWaiting(value: StateValue, formula: string): boolean {
  if (typeof value !== "object") return false;
  return waiting.has(value.error) || (value.error === "#NAME?" && /\bBATH\./i.test(formula));
}

interface Spilled {
  readonly spills: Map<number, { readonly rows: number; readonly columns: number }>;
  readonly spilled: [row: number, column: number, value: StateValue][];
}

function spillOf(workbook: Workbook, cell: Cell, index: number, { spills, spilled }: Spilled): void {
  const zone = workbook.grid.model.getters.getSpreadZone(positionOf(cell));
  if (zone === undefined || (zone.top === zone.bottom && zone.left === zone.right)) return;
  spills.set(index, { rows: zone.bottom - zone.top + 1, columns: zone.right - zone.left + 1 });
  for (let row = zone.top; row <= zone.bottom; row += 1)
    for (let column = zone.left; column <= zone.right; column += 1)
      if (row !== cell.row || column !== cell.column)
        spilled.push([row, column, shownValue(workbook, { sheet: cell.sheet, row, column })]);
}

function heightsOf({ grid }: Workbook, { id, rows, rowSizes }: SheetState): ReadonlyMap<number, number> {
  const heights = new Map<number, number>();
  for (let row = 0; row < rows; row += 1) {
    const height = rowSizes[row] === undefined ? grid.model.getters.getRowSize(id, row) : usualRow;
    if (height !== usualRow) heights.set(row, height);
  }
  return heights;
}

function shownSheet(workbook: Workbook, state: SheetState): ShownSheet {
  const kept = new Map(state.kept.map(([row, column, value]) => [`${String(row)},${String(column)}`, value] as const));
  const found: Spilled = { spills: new Map(), spilled: [] };
  const values = state.worked.map(([row, column, , formula], index) => {
    const cell: Cell = { sheet: state.id, row, column };
    const known = kept.get(`${String(row)},${String(column)}`);
    if (known !== undefined) return known;
    const value = shownValue(workbook, cell);
    if (isWaiting(value, state.formulas[formula] ?? ""))
      throw new NotWorkedOut(`${sheetPrefix(state.name)}${areaText({ row, column, rows: 1, columns: 1 })}`);
    spillOf(workbook, cell, index, found);
    return value;
  });
  return { values, ...found, heights: heightsOf(workbook, state) };
}

/** What the cells of a workbook show, for the state that was just made of it. Throws NotWorkedOut. */
export function shownValues(workbook: Workbook, { sheets }: WorkbookState): ShownValues {
  if (!workbook.answers.areComplete) throw new NotWorkedOut("A cell");
  return new Map(sheets.map((sheet) => [sheet.id, shownSheet(workbook, sheet)] as const));
}
