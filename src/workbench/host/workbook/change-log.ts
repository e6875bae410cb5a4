import type { Area, Cell } from "../address.ts";
import type { FormulaKeeper } from "./formula-keeper.ts";
import { areaOf, type Grid } from "./grid/grid.ts";
import type { TableGrowth } from "./table-growth.ts";
import type { Tables } from "./tables.ts";

/** Contents that changed on one sheet. */
export interface SheetChange {
  readonly area: Area;
  readonly by: "person" | "program";
}

/** The parts of the workbook that the log watches over. */
interface Watched {
  readonly grid: Grid;
  readonly formulas: FormulaKeeper;
  readonly tables: Tables;
  readonly growth: TableGrowth;
  readonly perform: (work: () => void) => void;
}

interface GridCommand {
  readonly type: string;
  readonly sheetId?: string;
  readonly row?: number;
  readonly col?: number;
  readonly content?: string;
}

/** Commands after which tables may stand elsewhere or be gone. */
const movesTables = new Set([
  "ADD_COLUMNS_ROWS",
  "REMOVE_COLUMNS_ROWS",
  "CREATE_TABLE",
  "REMOVE_TABLE",
  "UPDATE_TABLE",
  "DELETE_SHEET",
  "DUPLICATE_SHEET",
  "MOVE_RANGES",
  "UNDO",
  "REDO",
  "DELETE_CONTENT",
]);

/** Commands after which a formula may read otherwise though nobody wrote it. */
const rewordsFormulas = new Set([
  "RENAME_SHEET",
  "CREATE_SHEET",
  "DELETE_SHEET",
  "CREATE_TABLE",
  "REMOVE_TABLE",
  "CREATE_NAMED_RANGE",
  "UPDATE_NAMED_RANGE",
  "DELETE_NAMED_RANGE",
  "UNDO",
  "REDO",
]);

function union(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  const rows = Math.max(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.max(a.column + a.columns, b.column + b.columns) - column;
  return { sheet: a.sheet, row, column, rows, columns };
}

/**
 * Watches the grid's commands: tells whom it concerns which cells changed, and brings what a person
 * types (structured references, a row beneath a table) to what Excel would make of it.
 */
export class ChangeLog {
  private readonly workbook: Watched;
  private readonly listeners = new Set<(changes: readonly SheetChange[]) => void>();
  private changed = new Map<string, Area>();
  private typed: Cell[] = [];
  /** True while the host itself writes. */
  private program = 0;
  private following = false;

  constructor(workbook: Watched) {
    this.workbook = workbook;
    const { model } = workbook.grid;
    model.on("command-dispatched", this, (command: object) => {
      this.see(command as GridCommand);
    });
    model.on("update", this, () => {
      this.afterPerson();
    });
  }

  onChange(listener: (changes: readonly SheetChange[]) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private see(command: GridCommand): void {
    if (movesTables.has(command.type)) this.workbook.tables.markStale();
    if (rewordsFormulas.has(command.type)) this.workbook.formulas.forgetTexts();
    const { sheetId, row, col, content } = command;
    if (
      command.type !== "UPDATE_CELL" ||
      content === undefined ||
      sheetId === undefined ||
      row === undefined ||
      col === undefined
    )
      return;
    const cell: Cell = { sheet: sheetId, row, column: col };
    const area = areaOf(sheetId, { top: row, bottom: row, left: col, right: col });
    const known = this.changed.get(sheetId);
    this.changed.set(sheetId, known === undefined ? area : union(known, area));
    this.workbook.tables.noticeWrite(cell);
    if (content.startsWith("=")) {
      this.workbook.growth.formulaWritten(cell);
      if (this.program === 0) this.typed.push(cell);
    }
  }

  /** Writes of the host: announced as the program's, or not at all while events are off. */
  byProgram(announce: boolean, work: () => void): void {
    this.program += 1;
    try {
      work();
    } finally {
      this.program -= 1;
      this.publish(announce ? "program" : undefined);
    }
  }

  private afterPerson(): void {
    if (this.program > 0 || this.following) return;
    this.following = true;
    try {
      const typed = this.typed;
      this.typed = [];
      const foreign = typed.filter((cell) => this.needsTranslation(cell));
      if (foreign.length > 0 || this.workbook.tables.hasChanges()) {
        this.workbook.perform(() => {
          for (const cell of foreign) this.translate(cell);
        });
      }
    } finally {
      this.following = false;
    }
    this.publish("person");
  }

  private needsTranslation(cell: Cell): boolean {
    const text = this.workbook.formulas.gridText(cell);
    if (text === undefined) return false;
    try {
      return this.workbook.formulas.translate(cell, text) !== text;
    } catch {
      // Not a formula of Excel either: the grid shows its own error.
      return false;
    }
  }

  private translate(cell: Cell): void {
    const text = this.workbook.formulas.gridText(cell);
    try {
      if (text !== undefined) this.workbook.formulas.write(cell, text);
    } catch {
      // Refused as Excel would refuse it; what was typed stays with the grid's own error.
    }
  }

  private publish(by: SheetChange["by"] | undefined): void {
    const changes = [...this.changed.values()];
    this.changed = new Map();
    if (by === undefined || changes.length === 0) return;
    for (const listener of this.listeners) listener(changes.map((area) => ({ area, by })));
  }
}
