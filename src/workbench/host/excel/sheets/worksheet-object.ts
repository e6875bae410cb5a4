import { type Area, excelSize } from "../../address.ts";
import { ExcelError, invalidArgument } from "../../excel-error.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ChartsObject } from "../charts/charts.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";
import { TablesObject } from "../tables/tables-object.ts";
import { FreezePanesObject } from "./freeze-panes.ts";
import { PageBreaksObject } from "./page-breaks.ts";
import { PageLayoutObject } from "./page-layout.ts";
import { ProtectionObject } from "./protection.ts";

type Members =
  | "name"
  | "id"
  | "tabColor"
  | "showGridlines"
  | "position"
  | "visibility"
  | "activate"
  | "delete"
  | "getRange"
  | "getRangeByIndexes"
  | "getCell"
  | "getUsedRange"
  | "getUsedRangeOrNullObject"
  | "tables"
  | "charts"
  | "freezePanes"
  | "horizontalPageBreaks"
  | "pageLayout"
  | "protection"
  | "isNullObject";

/** The target is the grid's sheet id, which renaming does not touch. */
export class WorksheetObject extends ClientObject<string, Excel.Worksheet> implements Pick<Excel.Worksheet, Members> {
  protected readonly scalars = ["name", "id", "tabColor", "showGridlines", "position", "visibility"];

  constructor(requests: Requests, finding: Finding<string>) {
    super(requests, "Worksheet", finding);
  }

  protected fetch(property: string, sheet: string, workbook: Workbook): unknown {
    const { getters } = workbook.grid.model;
    switch (property) {
      case "name":
        return workbook.sheets.nameOf(sheet);
      case "id":
        return sheet;
      case "tabColor":
        return getters.getSheet(sheet).color ?? "";
      case "showGridlines":
        return getters.getGridLinesVisibility(sheet);
      case "position":
        return workbook.sheets.ids().indexOf(sheet);
      default:
        return getters.isSheetVisible(sheet) ? "Visible" : "Hidden";
    }
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  set name(name: string) {
    this.change(
      "name",
      (sheet, workbook) => {
        workbook.sheets.rename(sheet, name);
      },
      name,
    );
  }

  get id(): string {
    return this.loadedValue("id") as string;
  }

  get tabColor(): string {
    return this.loadedValue("tabColor") as string;
  }
  set tabColor(color: string) {
    if (color !== "" && !/^#[0-9a-f]{6}$/i.test(color))
      throw invalidArgument(`"${color}" is no #RRGGBB color.`, "Worksheet.tabColor");
    this.change(
      "tabColor",
      (sheetId, { grid }) => {
        grid.do("COLOR_SHEET", { sheetId, ...(color === "" ? {} : { color }) });
      },
      color,
    );
  }

  get showGridlines(): boolean {
    return this.loadedValue("showGridlines") as boolean;
  }
  set showGridlines(shown: boolean) {
    this.change(
      "showGridlines",
      (sheetId, { grid }) => {
        grid.do("SET_GRID_LINES_VISIBILITY", { sheetId, areGridLinesVisible: shown });
      },
      shown,
    );
  }

  get position(): number {
    return this.loadedValue("position") as number;
  }
  set position(position: number) {
    this.change(
      "position",
      (sheetId, workbook) => {
        const delta = position - workbook.sheets.ids().indexOf(sheetId);
        if (position < 0 || position >= workbook.sheets.ids().length)
          throw invalidArgument(`There is no place ${position} among the sheets.`);
        if (delta !== 0) workbook.grid.do("MOVE_SHEET", { sheetId, delta });
      },
      position,
    );
  }

  get visibility(): Excel.SheetVisibility {
    return this.loadedValue("visibility") as Excel.SheetVisibility;
  }
  set visibility(visibility: Excel.SheetVisibility | "Visible" | "Hidden" | "VeryHidden") {
    this.change(
      "visibility",
      (sheetId, { grid }) => {
        grid.do(visibility === "Visible" ? "SHOW_SHEET" : "HIDE_SHEET", { sheetId });
      },
      visibility,
    );
  }

  get tables(): Excel.TableCollection {
    return this.part(
      "tables",
      () =>
        new TablesObject(
          this.requests,
          partOf(this, "tables", (sheet) => ({ sheet })),
        ).face,
    );
  }
  get charts(): Excel.ChartCollection {
    return this.part(
      "charts",
      () =>
        new ChartsObject(
          this.requests,
          partOf(this, "charts", (sheet) => sheet),
        ).face,
    );
  }
  get freezePanes(): Excel.WorksheetFreezePanes {
    return this.part("freezePanes", () => new FreezePanesObject(this.requests, this).face);
  }
  get horizontalPageBreaks(): Excel.PageBreakCollection {
    return this.part("horizontalPageBreaks", () => new PageBreaksObject(this.requests, this).face);
  }
  get protection(): Excel.WorksheetProtection {
    return this.part("protection", () => new ProtectionObject(this.requests, this).face);
  }
  get pageLayout(): Excel.PageLayout {
    return this.part("pageLayout", () => new PageLayoutObject(this.requests, this).face);
  }

  activate(): void {
    this.requests.enqueue("look", "Worksheet.activate", () => {
      this.requests.workbookNow.activate(this.live());
    });
  }

  delete(): void {
    this.change("delete", (sheetId, workbook) => {
      if (workbook.sheets.ids().length === 1)
        throw new ExcelError("InvalidOperation", "A workbook must hold at least one visible sheet.");
      workbook.grid.do("DELETE_SHEET", { sheetId, sheetName: workbook.sheets.nameOf(sheetId) });
    });
  }

  private range(what: string, find: (sheet: string, workbook: Workbook) => Area | undefined): Excel.Range {
    return this.requests.make.range(this.requests, partOf(this, what, find));
  }

  getRange(address?: string): Excel.Range {
    return this.range(address ?? "range", (sheet, workbook) =>
      address === undefined
        ? { sheet, row: 0, column: 0, ...workbook.grid.sizeOf(sheet) }
        : workbook.area(address, sheet),
    );
  }

  getRangeByIndexes(row: number, column: number, rows: number, columns: number): Excel.Range {
    return this.range("range", (sheet) => {
      const whole = [row, column, rows, columns].every(Number.isInteger);
      if (
        !whole ||
        row < 0 ||
        column < 0 ||
        rows < 1 ||
        columns < 1 ||
        row + rows > excelSize.rows ||
        column + columns > excelSize.columns
      ) {
        throw invalidArgument(
          `There are no ${rows} by ${columns} cells at row ${row}, column ${column}.`,
          "Worksheet.getRangeByIndexes",
        );
      }
      return { sheet, row, column, rows, columns };
    });
  }

  getCell(row: number, column: number): Excel.Range {
    return this.getRangeByIndexes(row, column, 1, 1);
  }

  /** Cells that hold something; a wholly blank sheet gives A1, as in Excel. */
  getUsedRange(): Excel.Range {
    return this.range(
      "used range",
      (sheet, workbook) => workbook.usedArea(sheet) ?? { sheet, row: 0, column: 0, rows: 1, columns: 1 },
    );
  }

  getUsedRangeOrNullObject(): Excel.Range {
    return this.requests.make.range(this.requests, {
      ...partOf(this, "used range", (sheet, workbook) => workbook.usedArea(sheet)),
      orNull: () => true,
    });
  }
}
