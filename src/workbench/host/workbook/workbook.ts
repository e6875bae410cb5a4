import {
  type Area,
  areaText,
  type Cell,
  columnLetters,
  parseLocalAddress,
  sheetPrefix,
  splitAddress,
} from "../address.ts";
import { ExcelError, invalidArgument, itemNotFound } from "../excel-error.ts";
import type { OSpreadsheet } from "../library.ts";
import { Answers, answersKey } from "./answers.ts";
import { Cells } from "./cells.ts";
import { ChangeLog } from "./change-log.ts";
import { ChartScale } from "./chart-scale.ts";
import { Charts } from "./charts.ts";
import { Edits } from "./edits.ts";
import { FormatSpelling } from "./format-spelling.ts";
import { FormulaKeeper } from "./formula-keeper.ts";
import type { BatchSlot } from "./grid/batch-command.ts";
import { Grid, GridRefusal, zoneOf } from "./grid/grid.ts";
import { usualHabits } from "./habits.ts";
import { Names } from "./names.ts";
import { NumberFormats } from "./number-format.ts";
import { Sheets } from "./sheets.ts";
import { TableGrowth } from "./table-growth.ts";
import type { TableRecord } from "./table-record.ts";
import { Tables } from "./tables.ts";
import { Validations } from "./validations.ts";

/** What the grid cannot draw but a reader gets back as it was written. */
export type SheetNotes = Map<string, unknown>;

/** The open workbook: the grid's model and what Excel has beyond it. */
export class Workbook {
  readonly library: OSpreadsheet;
  readonly grid: Grid;
  readonly sheets: Sheets;
  readonly cells: Cells;
  readonly formulas: FormulaKeeper;
  readonly tables: Tables;
  readonly names: Names;
  readonly growth: TableGrowth;
  readonly formats: NumberFormats;
  readonly validations: Validations;
  readonly charts: Charts;
  readonly chartScale: ChartScale;
  readonly changes: ChangeLog;
  readonly edits: Edits;
  readonly habits = usualHabits();
  readonly answers = new Answers();
  /** The grid counts days from 1900 and has no other way; this is what Excel's setting would make functions answer. */
  datesFrom1904 = false;
  /** While it is, sheets can neither be added nor taken away. */
  structureLocked = false;
  /** Page set-up and the like by sheet id. */
  readonly notes = new Map<string, SheetNotes>();

  constructor(
    library: OSpreadsheet,
    data: object,
    custom: Record<string, unknown>,
    spelling = new FormatSpelling(library),
  ) {
    this.library = library;
    const slot: BatchSlot = { work: undefined };
    const added = { bathsheetBatch: slot, [answersKey]: this.answers };
    this.grid = new Grid(new library.Model(data, { custom: { ...custom, ...added } }), slot);
    this.edits = new Edits(library, this.grid);
    this.sheets = new Sheets(this.grid);
    this.tables = new Tables(this.grid, (cell) => this.cells.literal(cell));
    this.formulas = new FormulaKeeper(library, this.grid, {
      tableNamed: (name) => this.tables.named(name),
      tableAt: (cell) => this.tables.at(cell),
      sheetName: (sheet) => this.sheets.nameOf(sheet),
    });
    this.cells = new Cells(this.grid, this.formulas, this.answers);
    this.answers.attach(this.grid, ({ sheetId, row, col }) => this.cells.worked({ sheet: sheetId, row, column: col }));
    this.names = new Names(this.grid);
    this.validations = new Validations(this.grid);
    this.charts = new Charts(this.grid);
    this.chartScale = new ChartScale(this.grid, this.charts);
    this.growth = new TableGrowth({
      library,
      charts: this.charts,
      grid: this.grid,
      cells: this.cells,
      formulas: this.formulas,
      tables: this.tables,
      validations: this.validations,
      habits: this.habits,
    });
    this.formats = new NumberFormats(spelling, this.grid);
    this.changes = new ChangeLog({
      grid: this.grid,
      formulas: this.formulas,
      tables: this.tables,
      growth: this.growth,
      perform: (work) => {
        this.perform(work);
      },
    });
  }

  /** The smallest area that holds every filled cell of a sheet, or undefined for a blank one. */
  usedArea(sheet: string): Area | undefined {
    const filled = this.grid.model.getters.getCells(sheet).filter((cell) => cell.isFormula || cell.content !== "");
    const places = filled.map(({ id }) => this.grid.model.getters.getCellPosition(id));
    if (places.length === 0) return undefined;
    const rows = places.map(({ row }) => row);
    const columns = places.map(({ col }) => col);
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    return {
      sheet,
      row: top,
      column: left,
      rows: Math.max(...rows) - top + 1,
      columns: Math.max(...columns) - left + 1,
    };
  }

  /** The smallest area within `area` that holds all its filled cells, or undefined where it has none. */
  usedPart(area: Area): Area | undefined {
    const within = this.grid.clip(area);
    if (within === undefined) return undefined;
    const filled = (rows: readonly number[], columns: readonly number[]): boolean =>
      rows.some((row) => columns.some((column) => !this.cells.isBlank({ sheet: area.sheet, row, column })));
    const rows = Array.from({ length: within.rows }, (_, index) => within.row + index);
    const columns = Array.from({ length: within.columns }, (_, index) => within.column + index);
    const usedRows = rows.filter((row) => filled([row], columns));
    const usedColumns = columns.filter((column) => filled(rows, [column]));
    const [row, column] = [usedRows[0], usedColumns[0]];
    if (row === undefined || column === undefined) return undefined;
    return {
      sheet: area.sheet,
      row,
      column,
      rows: (usedRows.at(-1) ?? row) - row + 1,
      columns: (usedColumns.at(-1) ?? column) - column + 1,
    };
  }

  /** Takes rows (counted from the first below the header) out of a table; the grid moves whole sheet rows. */
  deleteTableRows(table: TableRecord, rows: readonly number[]): void {
    const { area } = this.tables.current(table);
    if (rows.some((row) => !Number.isInteger(row) || row < 0 || row >= area.rows - 1))
      throw invalidArgument("The table has no such row.");
    this.requireUnlocked(area.sheet, "TableRowCollection.deleteRows");
    const elements = rows.map((row) => area.row + 1 + row);
    this.grid.do("REMOVE_COLUMNS_ROWS", {
      sheetId: area.sheet,
      sheetName: this.sheets.nameOf(area.sheet),
      dimension: "ROW",
      elements,
    });
  }

  private requireLines(area: Area, dimension: "ROW" | "COL"): { readonly first: number; readonly count: number } {
    const size = this.grid.sizeOf(area.sheet);
    const whole =
      dimension === "ROW"
        ? area.column === 0 && area.columns >= size.columns
        : area.row === 0 && area.rows >= size.rows;
    if (!whole)
      throw new ExcelError(
        "NotImplemented",
        "The stand-in inserts and deletes whole sheet rows and columns only.",
        "Range.insert",
      );
    this.requireUnlocked(area.sheet, "Range.insert");
    return dimension === "ROW" ? { first: area.row, count: area.rows } : { first: area.column, count: area.columns };
  }

  /** Inserts whole sheet rows or columns before the area. */
  insertLines(area: Area, dimension: "ROW" | "COL"): void {
    const { first, count } = this.requireLines(area, dimension);
    this.grid.do("ADD_COLUMNS_ROWS", {
      sheetId: area.sheet,
      sheetName: this.sheets.nameOf(area.sheet),
      dimension,
      base: first,
      quantity: count,
      position: "before",
    });
  }

  /** Deletes the area's whole sheet rows or columns. */
  removeLines(area: Area, dimension: "ROW" | "COL"): void {
    const { first, count } = this.requireLines(area, dimension);
    const elements = Array.from({ length: count }, (_, index) => first + index);
    this.grid.do("REMOVE_COLUMNS_ROWS", {
      sheetId: area.sheet,
      sheetName: this.sheets.nameOf(area.sheet),
      dimension,
      elements,
    });
  }

  notesOf(sheet: string): SheetNotes {
    const notes = this.notes.get(sheet) ?? new Map<string, unknown>();
    this.notes.set(sheet, notes);
    return notes;
  }

  /** The area that an address means; without a sheet name in it, on `sheet`. */
  area(address: string, sheet: string): Area {
    const { sheetName, local } = splitAddress(address);
    const on = sheetName === undefined ? sheet : this.sheets.named(sheetName);
    if (on === undefined) throw itemNotFound(`There is no sheet ${sheetName ?? ""}.`);
    const named = this.names.find(local);
    if (named !== undefined) return named;
    const parsed = parseLocalAddress(local, this.grid.sizeOf(on));
    if (parsed === undefined) throw invalidArgument(`"${address}" is no address.`, "Worksheet.getRange");
    return { sheet: on, ...parsed };
  }

  /** `Readings!B2:C9`, as `range.address` says it. */
  addressOf(area: Area): string {
    return sheetPrefix(this.sheets.nameOf(area.sheet)) + this.localAddressOf(area);
  }

  /** `Readings!$B$2:$C$9`, as a name's formula says it. */
  fixedAddressOf(area: Area): string {
    return sheetPrefix(this.sheets.nameOf(area.sheet)) + areaText(area, true);
  }

  localAddressOf(area: Area): string {
    const size = this.grid.sizeOf(area.sheet);
    const last = (count: number, start: number): number => start + count;
    if (area.row === 0 && area.rows >= size.rows)
      return `${columnLetters(area.column)}:${columnLetters(last(area.columns, area.column) - 1)}`;
    if (area.column === 0 && area.columns >= size.columns) return `${area.row + 1}:${last(area.rows, area.row)}`;
    return areaText(area);
  }

  /** Refuses writes to a locked sheet with Excel's code. */
  requireUnlocked(sheet: string, location: string): void {
    if (!this.sheets.exists(sheet)) throw itemNotFound("The sheet was deleted.", location);
    if (this.grid.model.getters.isSheetLocked(sheet)) {
      throw new ExcelError(
        "AccessDenied",
        `You cannot perform the requested operation. Sheet ${this.sheets.nameOf(sheet)} is protected.`,
        location,
      );
    }
  }

  /** One piece of work on the workbook: one command to the grid, tables at rest afterwards. */
  perform(work: () => void): void {
    try {
      this.grid.batch(() => {
        try {
          work();
        } finally {
          this.growth.settle();
        }
      });
    } catch (error) {
      if (!(error instanceof GridRefusal)) throw error;
      const locked = error.reasons.some((reason) => reason === "SheetLocked" || reason === "Readonly");
      throw new ExcelError(locked ? "AccessDenied" : "InvalidArgument", error.message);
    }
  }

  /** Brings a sheet to the front. */
  activate(sheet: string): void {
    const active = this.grid.model.getters.getActiveSheetId();
    if (active !== sheet) this.grid.do("ACTIVATE_SHEET", { sheetIdFrom: active, sheetIdTo: sheet });
  }

  /** Brings an area's sheet to the front and selects the area. */
  select(area: Area): void {
    this.grid.makeRoom(area);
    this.activate(area.sheet);
    this.grid.model.selection.selectZone({ cell: { row: area.row, col: area.column }, zone: zoneOf(area) });
  }

  cellAt(area: Area): Cell {
    return { sheet: area.sheet, row: area.row, column: area.column };
  }
}
