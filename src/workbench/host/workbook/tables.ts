import { contains, overlap, type Area, type Cell } from "../address.ts";
import { invalidArgument, itemNotFound } from "../excel-error.ts";
import type { TableShape } from "../formulas/translate.ts";
import type { CoreTable } from "../library.ts";
import { areaOf, zoneOf, type Grid } from "./grid.ts";
import type { CalculatedColumn, TableChange, TableRecord } from "./table-record.ts";

const tableName = /^[\p{L}_\\][\p{L}\p{N}_.\\]{0,254}$/u;
const looksLikeCell = /^(?:[A-Z]{1,3}\d{1,7}|R\d*C\d*|[RC])$/i;

function sameShape(a: TableShape, b: TableShape): boolean {
  return zoneKey(a.area) === zoneKey(b.area) && a.headers.join("\n") === b.headers.join("\n");
}

function zoneKey({ sheet, row, column, rows, columns }: Area): string {
  return [sheet, row, column, rows, columns].join("|");
}

export class Tables {
  private readonly grid: Grid;
  private readonly headerText: (cell: Cell) => string;
  private readonly records = new Map<string, TableRecord>();
  private stale = true;
  private changes: TableChange[] = [];

  constructor(grid: Grid, headerText: (cell: Cell) => string) {
    this.grid = grid;
    this.headerText = headerText;
  }

  /** Call whenever a table of the grid or a header may have changed. */
  markStale(): void {
    this.stale = true;
  }

  /** Call for every cell that gets contents: a header may be renamed, or the grid may have stretched a table over the cell. */
  noticeWrite({ sheet, row, column }: Cell): void {
    for (const core of this.grid.model.getters.getCoreTables(sheet)) {
      const { zone } = core.range;
      const known = this.records.get(`${sheet}|${core.id}`);
      const moved = known === undefined || zoneKey(known.area) !== zoneKey(areaOf(sheet, zone));
      if (moved || (row === zone.top && column >= zone.left && column <= zone.right)) this.stale = true;
    }
  }

  /** All tables in order of sheets, up to date. */
  list(): readonly TableRecord[] {
    if (this.stale) this.look();
    return [...this.records.values()];
  }

  named(name: string): TableRecord | undefined {
    return this.list().find((table) => table.name.toLowerCase() === name.toLowerCase());
  }

  at(cell: Cell): TableRecord | undefined {
    return this.list().find(({ area }) => contains(area, cell));
  }

  hasChanges(): boolean {
    this.list();
    return this.changes.length > 0;
  }

  /** The changes since the last call, oldest first. */
  takeChanges(): readonly TableChange[] {
    this.list();
    const changes = this.changes;
    this.changes = [];
    return changes;
  }

  private look(): void {
    this.stale = false;
    const { getters } = this.grid.model;
    const seen = new Set<string>();
    for (const sheet of getters.getSheetIds()) {
      for (const core of getters.getCoreTables(sheet)) {
        const key = `${sheet}|${core.id}`;
        seen.add(key);
        this.lookAt(key, sheet, core);
      }
    }
    for (const key of [...this.records.keys()]) if (!seen.has(key)) this.records.delete(key);
  }

  private lookAt(key: string, sheet: string, core: CoreTable): void {
    const area = areaOf(sheet, core.range.zone);
    const headers = Array.from({ length: area.columns }, (_, index) => this.headerText({ sheet, row: area.row, column: area.column + index }));
    const known = this.records.get(key);
    if (known === undefined) {
      const table: TableRecord = { key, name: this.freeName(), area, headers, style: "TableStyleMedium2", calculated: new Map() };
      this.records.set(key, table);
      this.changes.push({ table, before: undefined });
      return;
    }
    const before: TableShape = { name: known.name, area: known.area, headers: known.headers };
    if (sameShape(before, { name: known.name, area, headers })) return;
    known.area = area;
    known.headers = headers;
    this.changes.push({ table: known, before });
  }

  private freeName(): string {
    const taken = new Set([...this.records.values()].map(({ name }) => name.toLowerCase()));
    let count = 1;
    while (taken.has(`table${count}`)) count += 1;
    return `Table${count}`;
  }

  /** Makes a table over the area, whose first row is the header. */
  add(area: Area): TableRecord {
    if (area.rows < 2) throw invalidArgument("A table needs a header row and at least one row below it.");
    const other = this.list().find((table) => overlap(table.area, area));
    if (other !== undefined) throw invalidArgument(`The new table would overlap table ${other.name}.`);
    this.grid.makeRoom(area);
    this.grid.do("CREATE_TABLE", {
      sheetId: area.sheet,
      ranges: [this.grid.model.getters.getRangeDataFromZone(area.sheet, zoneOf(area))],
      tableType: "static",
      config: { hasFilters: true, totalRow: false, firstColumn: false, lastColumn: false, numberOfHeaders: 1, bandedRows: true, bandedColumns: false, automaticAutofill: false, styleId: "TableStyleMedium2" },
    });
    this.markStale();
    const table = this.at(area);
    if (table === undefined) throw invalidArgument("The table could not be made.");
    return table;
  }

  /** The record with its present area. Throws ItemNotFound after the table was removed. */
  current(table: TableRecord): TableRecord {
    const known = this.list().find((one) => one.key === table.key);
    if (known === undefined) throw itemNotFound(`Table ${table.name} was deleted.`);
    return known;
  }

  /** Keeps Excel's style name and draws the grid's style of that name where it has one. */
  restyle(table: TableRecord, style: string): void {
    table.style = style;
    const styleId = style === "" ? "None" : style;
    const { sheetId, zone, config } = { sheetId: table.area.sheet, zone: zoneOf(table.area), config: { styleId } };
    if (Object.hasOwn(this.grid.model.getters.getTableStyles(), styleId)) this.grid.do("UPDATE_TABLE", { sheetId, zone, config });
  }

  /** Gives the grid's tables back what was saved of them; they stand where they stood. */
  adopt(saved: readonly { cell: Cell; name: string; style: string; calculated: readonly (readonly [string, CalculatedColumn])[] }[]): void {
    for (const { cell, name, style, calculated } of saved) {
      const table = this.at(cell);
      if (table === undefined) continue;
      table.name = name;
      table.style = style;
      for (const [header, column] of calculated) table.calculated.set(header, column);
    }
    this.changes = [];
  }

  rename(table: TableRecord, name: string): void {
    if (!tableName.test(name) || looksLikeCell.test(name)) throw invalidArgument(`"${name}" cannot be a table's name.`);
    const other = this.named(name);
    if (other !== undefined && other !== table) throw invalidArgument(`There is already a table named ${other.name}.`);
    table.name = name;
  }

  resize(table: TableRecord, area: Area): void {
    if (area.sheet !== table.area.sheet || area.row !== table.area.row) throw invalidArgument("A table keeps its sheet and header row when it is resized.");
    if (area.rows < 2) throw invalidArgument("A table needs a header row and at least one row below it.");
    const other = this.list().find((one) => one !== table && overlap(one.area, area));
    if (other !== undefined) throw invalidArgument(`The table would overlap table ${other.name}.`);
    this.grid.makeRoom(area);
    this.grid.do("UPDATE_TABLE", {
      sheetId: area.sheet,
      zone: zoneOf(table.area),
      newTableRange: this.grid.model.getters.getRangeDataFromZone(area.sheet, zoneOf(area)),
    });
    this.markStale();
  }

  configure(table: TableRecord, config: Partial<CoreTable["config"]>): void {
    this.grid.do("UPDATE_TABLE", { sheetId: table.area.sheet, zone: zoneOf(table.area), config });
  }

  configOf(table: TableRecord): CoreTable["config"] | undefined {
    return this.grid.model.getters.getCoreTable({ sheetId: table.area.sheet, row: table.area.row, col: table.area.column })?.config;
  }
}
