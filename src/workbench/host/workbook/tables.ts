import { type Area, type Cell, overlap } from "../address.ts";
import { invalidArgument, itemNotFound } from "../excel-error.ts";
import type { CoreTable } from "../library.ts";
import { zoneOf } from "./grid/grid.ts";
import type { CalculatedColumn, TableRecord } from "./table-record.ts";
import { TableWatch } from "./table-watch.ts";

const tableName = /^[\p{L}_\\][\p{L}\p{N}_.\\]{0,254}$/u;
const looksLikeCell = /^(?:[A-Z]{1,3}\d{1,7}|R\d*C\d*|[RC])$/i;

/** Makes, moves and dresses the tables that the grid draws. */
export class Tables extends TableWatch {
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
      config: {
        hasFilters: true,
        totalRow: false,
        firstColumn: false,
        lastColumn: false,
        numberOfHeaders: 1,
        bandedRows: true,
        bandedColumns: false,
        automaticAutofill: false,
        styleId: "TableStyleMedium2",
      },
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
    if (Object.hasOwn(this.grid.model.getters.getTableStyles(), styleId))
      this.grid.do("UPDATE_TABLE", { sheetId, zone, config });
  }

  /** Gives the grid's tables back what was saved of them; they stand where they stood. */
  adopt(
    saved: readonly {
      cell: Cell;
      name: string;
      style: string;
      calculated: readonly (readonly [string, CalculatedColumn])[];
    }[],
  ): void {
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
    if (area.sheet !== table.area.sheet || area.row !== table.area.row)
      throw invalidArgument("A table keeps its sheet and header row when it is resized.");
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

  /** Whether some of the table's rows are hidden by a filter. */
  isFiltered(table: TableRecord): boolean {
    const { sheet, row, rows } = this.current(table).area;
    const { getters } = this.grid.model;
    return Array.from({ length: rows - 1 }, (_, index) => row + 1 + index).some((one) =>
      getters.isRowFiltered(sheet, one),
    );
  }

  configOf(table: TableRecord): CoreTable["config"] | undefined {
    return this.grid.model.getters.getCoreTable({
      sheetId: table.area.sheet,
      row: table.area.row,
      col: table.area.column,
    })?.config;
  }
}
