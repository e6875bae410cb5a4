import type { Area } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import { zoneOf } from "../../workbook/grid/grid.ts";
import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";
import { TableColumnsObject } from "./table-columns.ts";
import { TableFilterObject } from "./table-filter.ts";
import { TableRowsObject } from "./table-rows.ts";

type Members =
  | "name"
  | "id"
  | "style"
  | "showBandedRows"
  | "showBandedColumns"
  | "showFilterButton"
  | "showHeaders"
  | "showTotals"
  | "getRange"
  | "getHeaderRowRange"
  | "getDataBodyRange"
  | "resize"
  | "rows"
  | "columns"
  | "worksheet"
  | "delete"
  | "convertToRange"
  | "autoFilter"
  | "isNullObject";

export class TableObject extends ClientObject<TableRecord, Excel.Table> implements Pick<Excel.Table, Members> {
  protected readonly scalars = [
    "name",
    "id",
    "style",
    "showBandedRows",
    "showBandedColumns",
    "showFilterButton",
    "showHeaders",
    "showTotals",
  ];

  constructor(requests: Requests, finding: Finding<TableRecord>) {
    super(requests, "Table", finding);
  }

  protected fetch(property: string, table: TableRecord, workbook: Workbook): unknown {
    const config = workbook.tables.configOf(table);
    switch (property) {
      case "name":
        return table.name;
      case "id":
        return table.key;
      case "style":
        return table.style;
      case "showBandedRows":
        return config?.bandedRows ?? false;
      case "showBandedColumns":
        return config?.bandedColumns ?? false;
      case "showFilterButton":
        return config?.hasFilters ?? false;
      case "showHeaders":
        return true;
      default:
        return false;
    }
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  set name(name: string) {
    this.change(
      "name",
      (table, workbook) => {
        workbook.growth.renameTable(table, name);
      },
      name,
    );
  }

  get id(): string {
    return this.loadedValue("id") as string;
  }

  get style(): string {
    return this.loadedValue("style") as string;
  }
  set style(style: string) {
    this.change(
      "style",
      (table, workbook) => {
        workbook.tables.restyle(table, style);
      },
      style,
    );
  }

  get showBandedRows(): boolean {
    return this.loadedValue("showBandedRows") as boolean;
  }
  set showBandedRows(bandedRows: boolean) {
    this.change(
      "showBandedRows",
      (table, { tables }) => {
        tables.configure(table, { bandedRows });
      },
      bandedRows,
    );
  }

  get showBandedColumns(): boolean {
    return this.loadedValue("showBandedColumns") as boolean;
  }
  set showBandedColumns(bandedColumns: boolean) {
    this.change(
      "showBandedColumns",
      (table, { tables }) => {
        tables.configure(table, { bandedColumns });
      },
      bandedColumns,
    );
  }

  get showFilterButton(): boolean {
    return this.loadedValue("showFilterButton") as boolean;
  }
  set showFilterButton(hasFilters: boolean) {
    this.change(
      "showFilterButton",
      (table, { tables }) => {
        tables.configure(table, { hasFilters });
      },
      hasFilters,
    );
  }

  get showHeaders(): boolean {
    return this.loadedValue("showHeaders") as boolean;
  }
  get showTotals(): boolean {
    return this.loadedValue("showTotals") as boolean;
  }

  get worksheet(): Excel.Worksheet {
    return this.part("worksheet", () =>
      this.requests.make.worksheet(
        this.requests,
        partOf(this, "sheet", ({ area }) => area.sheet),
      ),
    );
  }
  get rows(): Excel.TableRowCollection {
    return this.part("rows", () => new TableRowsObject(this.requests, this).face);
  }
  get columns(): Excel.TableColumnCollection {
    return this.part(
      "columns",
      () =>
        new TableColumnsObject(
          this.requests,
          partOf(this, "columns", (table) => table),
        ).face,
    );
  }

  get autoFilter(): Excel.AutoFilter {
    return this.part("autoFilter", () => new TableFilterObject(this.requests, this).face);
  }

  private range(what: string, derive: (area: Area) => Area): Excel.Range {
    return this.requests.make.range(
      this.requests,
      partOf(this, what, (table, workbook) => derive(workbook.tables.current(table).area)),
    );
  }

  getRange(): Excel.Range {
    return this.range("table range", (area) => area);
  }

  getHeaderRowRange(): Excel.Range {
    return this.range("header row", (area) => ({ ...area, rows: 1 }));
  }

  getDataBodyRange(): Excel.Range {
    return this.range("data body", (area) => ({ ...area, row: area.row + 1, rows: area.rows - 1 }));
  }

  resize(newRange: Excel.Range | string): void {
    const given = typeof newRange === "string" ? undefined : rangeTarget(newRange);
    this.change("resize", (table, workbook) => {
      workbook.requireUnlocked(table.area.sheet, "Table.resize");
      const area = given === undefined ? workbook.area(newRange as string, table.area.sheet) : given();
      if (area.columns < 1) throw invalidArgument("A table needs a column.");
      workbook.tables.resize(workbook.tables.current(table), area);
    });
  }

  /** Removes the table with its cells' contents, as Excel does. */
  delete(): void {
    this.change("delete", (table, { grid }) => {
      grid.do("REMOVE_TABLE", { sheetId: table.area.sheet, target: [zoneOf(table.area)] });
      grid.do("CLEAR_CELLS", { sheetId: table.area.sheet, target: [zoneOf(table.area)] });
    });
  }

  convertToRange(): Excel.Range {
    const range = this.getRange();
    this.change("convertToRange", (table, { grid }) => {
      grid.do("REMOVE_TABLE", { sheetId: table.area.sheet, target: [zoneOf(table.area)] });
    });
    return range;
  }
}
