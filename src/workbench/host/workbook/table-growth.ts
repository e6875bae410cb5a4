import type { Area, Cell } from "../address.ts";
import type { OSpreadsheet } from "../library.ts";
import type { Cells } from "./cells.ts";
import { stretchCharts } from "./chart-growth.ts";
import type { Charts } from "./charts.ts";
import { copyLook } from "./copy-look.ts";
import type { FormulaKeeper } from "./formula-keeper.ts";
import type { Grid } from "./grid/grid.ts";
import type { Habits } from "./habits.ts";
import { extendRules } from "./rules.ts";
import type { CalculatedColumn, TableChange, TableRecord } from "./table-record.ts";
import type { Tables } from "./tables.ts";
import type { Validations } from "./validations.ts";

interface Parts {
  readonly library: OSpreadsheet;
  readonly grid: Grid;
  readonly cells: Cells;
  readonly formulas: FormulaKeeper;
  readonly tables: Tables;
  readonly charts: Charts;
  readonly validations: Validations;
  readonly habits: Habits;
}

function grewAtItsEnd({ table: { area }, before }: TableChange): boolean {
  const old = before?.area;
  return (
    old !== undefined &&
    area.row === old.row &&
    area.column === old.column &&
    area.columns === old.columns &&
    area.rows >= old.rows
  );
}

/** What Excel does by itself when tables change: names blank headers, fills new rows, corrects formulas. */
export class TableGrowth {
  private readonly parts: Parts;
  /** Top cells of columns that got a formula since the last settling. */
  private readonly written = new Map<string, Cell>();

  constructor(parts: Parts) {
    this.parts = parts;
  }

  /** Call for every formula that is written, by whomever. */
  formulaWritten(cell: Cell): void {
    const key = `${cell.sheet}|${cell.column}`;
    const known = this.written.get(key);
    if (known === undefined || known.row > cell.row) this.written.set(key, cell);
  }

  /** Brings tables and formulas to rest. True when something had to be done. */
  settle(): boolean {
    const changes = this.parts.tables.takeChanges();
    for (const change of changes) this.follow(change);
    this.noteWrittenColumns();
    const resized = changes.filter(({ before }) => before !== undefined);
    const names = (grown: boolean): ReadonlySet<string> =>
      new Set(resized.filter((change) => grewAtItsEnd(change) === grown).map(({ table }) => table.name.toLowerCase()));
    if (resized.length > 0) this.parts.formulas.refresh({ moved: names(false), grown: names(true) });
    return changes.length > 0;
  }

  private noteWrittenColumns(): void {
    if (this.written.size === 0) return;
    for (const table of this.parts.tables.list()) {
      table.headers.forEach((_, index) => {
        const top = this.written.get(`${table.area.sheet}|${table.area.column + index}`);
        if (top !== undefined && top.row < table.area.row + table.area.rows)
          this.noteColumn(table, index, table.area.rows - 1);
      });
    }
    this.written.clear();
  }

  private follow({ table, before }: TableChange): void {
    this.nameBlankHeaders(table);
    if (before === undefined) {
      table.headers.forEach((_, index) => {
        this.noteColumn(table, index, table.area.rows - 1);
      });
      return;
    }
    this.followHeaders(table, before.headers);
    const grown = table.area.rows - before.area.rows;
    const inserted = table.area.row !== before.area.row || grown <= 0;
    if (inserted) return;
    before.headers.forEach((_, index) => {
      this.noteColumn(table, index, before.area.rows - 1);
    });
    for (let row = table.area.row + before.area.rows; row < table.area.row + table.area.rows; row += 1)
      this.fillRow(table, row, table.area.row + before.area.rows - 1);
    if (this.parts.habits.resizingDressesRows) extendRules(this.parts.grid, table.area, before.area.rows);
    this.parts.validations.stretchLists(table.area, before.area.rows);
    stretchCharts(this.parts.grid, this.parts.charts, table.area, before.area.rows);
  }

  private nameBlankHeaders(table: TableRecord): void {
    const taken = new Set(table.headers.map((header) => header.toLowerCase()));
    table.headers.forEach((header, index) => {
      if (header !== "") return;
      let count = 1;
      while (taken.has(`column${count}`)) count += 1;
      const name = `Column${count}`;
      taken.add(name.toLowerCase());
      table.headers = table.headers.with(index, name);
      this.parts.cells.write({ sheet: table.area.sheet, row: table.area.row, column: table.area.column + index }, name);
    });
  }

  /** A header typed over keeps every formula that names it. */
  private followHeaders(table: TableRecord, before: readonly string[]): void {
    if (before.length !== table.headers.length) return;
    const headers = new Map<string, string>();
    before.forEach((old, index) => {
      const now = table.headers[index];
      if (now !== undefined && now !== old) headers.set(old.toLowerCase(), now);
    });
    if (headers.size === 0) return;
    for (const [old, now] of headers) {
      const calculated = table.calculated.get(old);
      if (calculated !== undefined) table.calculated.set(now.toLowerCase(), calculated);
      table.calculated.delete(old);
    }
    this.parts.formulas.rename(this.parts.formulas.entries(), { table: table.name, headers });
    this.noteAllColumns();
  }

  renameTable(table: TableRecord, name: string): void {
    const entries = this.parts.formulas.entries();
    const old = table.name;
    this.parts.tables.rename(table, name);
    this.parts.formulas.rename(entries, { table: old, newTable: name, headers: new Map() });
    this.noteAllColumns();
  }

  /** After a renaming the texts that new rows get are read anew. */
  private noteAllColumns(): void {
    for (const table of this.parts.tables.list())
      table.headers.forEach((_, index) => {
        this.noteColumn(table, index, table.area.rows - 1);
      });
  }

  /** A column whose first `rows` rows carry one formula is a calculated column from then on. */
  private noteColumn(table: TableRecord, index: number, rows: number): void {
    const header = table.headers[index]?.toLowerCase();
    if (header === undefined || rows < 1) return;
    const first: Cell = { sheet: table.area.sheet, row: table.area.row + 1, column: table.area.column + index };
    const text = this.parts.formulas.read(first);
    const known = table.calculated.get(header);
    // A column stays calculated whatever is typed over single cells of it; reading all of a long one is slow.
    if (text === undefined || (known?.text === text && (known.kind === "same text" || known.row === first.row))) return;
    const all = Array.from({ length: rows }, (_, offset): Cell => ({ ...first, row: first.row + offset }));
    const calculated: CalculatedColumn =
      text === this.parts.formulas.gridText(first)
        ? { kind: "relative", text, row: first.row }
        : { kind: "same text", text };
    const uniform = all.every((cell) =>
      calculated.kind === "same text"
        ? this.parts.formulas.read(cell) === text
        : this.parts.formulas.gridText(cell) === this.shifted(calculated, cell),
    );
    if (uniform) table.calculated.set(header, calculated);
  }

  private shifted(calculated: Extract<CalculatedColumn, { kind: "relative" }>, cell: Cell): string {
    const { getters } = this.parts.grid.model;
    const compiled = this.parts.library.CompiledFormula.Compile(calculated.text, cell.sheet, getters);
    return getters.getTranslatedCellFormula(cell.sheet, 0, cell.row - calculated.row, compiled);
  }

  private fillRow(table: TableRecord, row: number, model: number): void {
    if (this.parts.habits.resizingDressesRows) this.copyLook(table.area, model, row);
    table.headers.forEach((header, index) => {
      const calculated = table.calculated.get(header.toLowerCase());
      const cell: Cell = { sheet: table.area.sheet, row, column: table.area.column + index };
      if (calculated === undefined || !this.parts.cells.isBlank(cell)) return;
      this.parts.formulas.write(
        cell,
        calculated.kind === "same text" ? calculated.text : this.shifted(calculated, cell),
      );
    });
  }

  /** A new row looks like the last that was there where it has no look of its own; looks of rows between may still wait. */
  private copyLook({ sheet, row: top, column: left, columns }: Area, model: number, row: number): void {
    if (model <= top) return;
    for (let column = left; column < left + columns; column += 1)
      copyLook(this.parts.grid, { sheet, row: model, column }, { sheet, row, column }, true);
  }
}
