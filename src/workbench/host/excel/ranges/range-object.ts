import type { Area, Cell } from "../../address.ts";
import { ExcelError } from "../../excel-error.ts";
import { copyFormula } from "../../workbook/copy-formula.ts";
import { copyLook } from "../../workbook/copy-look.ts";
import { positionOf, zoneOf } from "../../workbook/grid/grid.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { checkContents } from "../limits.ts";
import { partOf } from "../requests/client-object.ts";
import { cellsOf, checkedMatrix, mapArea, spread } from "../requests/matrix.ts";
import type { Finding, Requests } from "../requests/requests.ts";
import { ConditionalFormatsObject } from "./conditional-formats.ts";
import { DataValidationObject } from "./data-validation.ts";
import { RangeFormatObject } from "./range-format.ts";
import { rangeTarget } from "./range-target.ts";
import { RelatedRanges } from "./related-ranges.ts";

type Members =
  | "values"
  | "formulas"
  | "numberFormat"
  | "text"
  | "address"
  | "rowIndex"
  | "columnIndex"
  | "rowCount"
  | "columnCount"
  | "cellCount"
  | "getRowsBelow"
  | "getResizedRange"
  | "getOffsetRange"
  | "getCell"
  | "getRow"
  | "getColumn"
  | "getLastRow"
  | "getEntireColumn"
  | "getEntireRow"
  | "insert"
  | "delete"
  | "getUsedRangeOrNullObject"
  | "select"
  | "clear"
  | "group"
  | "hideGroupDetails"
  | "copyFrom"
  | "format"
  | "dataValidation"
  | "conditionalFormats"
  | "worksheet"
  | "load"
  | "isNullObject"
  | "context";

/** The grid's group of the range's rows or columns. */
function groupedBy(option: string, area: Area) {
  const { left, right, top, bottom } = zoneOf(area);
  return option === "ByColumns"
    ? ({ sheetId: area.sheet, dimension: "COL", start: left, end: right } as const)
    : ({ sheetId: area.sheet, dimension: "ROW", start: top, end: bottom } as const);
}

export class RangeObject extends RelatedRanges implements Pick<Excel.Range, Exclude<Members, "load" | "context">> {
  protected readonly scalars = [
    "values",
    "formulas",
    "numberFormat",
    "text",
    "address",
    "rowIndex",
    "columnIndex",
    "rowCount",
    "columnCount",
    "cellCount",
  ];
  protected override readonly uncalculated = [
    "numberFormat",
    "address",
    "rowIndex",
    "columnIndex",
    "rowCount",
    "columnCount",
  ];

  constructor(requests: Requests, finding: Finding<Area>) {
    super(requests, "Range", finding);
  }

  protected fetch(property: string, area: Area, workbook: Workbook): unknown {
    const each = (read: (cell: Cell) => unknown, blank: unknown): unknown[][] => {
      this.requests.traffic.cellsRead += area.rows * area.columns;
      const size = workbook.grid.sizeOf(area.sheet);
      return mapArea(area, (cell) => (cell.row < size.rows && cell.column < size.columns ? read(cell) : blank));
    };
    switch (property) {
      case "values":
        return each((cell) => workbook.cells.value(cell), "");
      case "formulas":
        return each((cell) => workbook.cells.formula(cell), "");
      case "text":
        return each((cell) => workbook.cells.displayed(cell), "");
      case "numberFormat":
        return each((cell) => workbook.formats.read(cell.sheet, cell.row, cell.column), "General");
      case "address":
        return workbook.addressOf(area);
      case "rowIndex":
        return area.row;
      case "columnIndex":
        return area.column;
      case "rowCount":
        return area.rows;
      case "columnCount":
        return area.columns;
      default:
        return area.rows * area.columns;
    }
  }

  get values(): unknown[][] {
    return this.loadedValue("values") as unknown[][];
  }
  set values(value: unknown[][]) {
    this.writeCells("values", value);
  }

  get formulas(): unknown[][] {
    return this.loadedValue("formulas") as unknown[][];
  }
  set formulas(value: unknown[][]) {
    this.writeCells("formulas", value);
  }

  get numberFormat(): unknown[][] {
    return this.loadedValue("numberFormat") as unknown[][];
  }
  set numberFormat(value: unknown[][]) {
    this.change(
      "numberFormat",
      (area, workbook) => {
        workbook.requireUnlocked(area.sheet, "Range.numberFormat");
        workbook.formats.write(
          area,
          checkedMatrix(spread(value, area, workbook.habits), area, "Range.numberFormat").map((line) =>
            line.map((format) => (typeof format === "string" ? format : null)),
          ),
        );
      },
      value,
    );
  }

  get text(): string[][] {
    return this.loadedValue("text") as string[][];
  }
  get address(): string {
    return this.loadedValue("address") as string;
  }
  get rowIndex(): number {
    return this.loadedValue("rowIndex") as number;
  }
  get columnIndex(): number {
    return this.loadedValue("columnIndex") as number;
  }
  get rowCount(): number {
    return this.loadedValue("rowCount") as number;
  }
  get columnCount(): number {
    return this.loadedValue("columnCount") as number;
  }
  get cellCount(): number {
    return this.loadedValue("cellCount") as number;
  }

  get format(): Excel.RangeFormat {
    return this.part("format", () => new RangeFormatObject(this.requests, this).face);
  }
  get dataValidation(): Excel.DataValidation {
    return this.part("dataValidation", () => new DataValidationObject(this.requests, this).face);
  }
  get conditionalFormats(): Excel.ConditionalFormatCollection {
    return this.part("conditionalFormats", () => new ConditionalFormatsObject(this.requests, this).face);
  }
  get worksheet(): Excel.Worksheet {
    return this.part("worksheet", () =>
      this.requests.make.worksheet(
        this.requests,
        partOf(this, "sheet", ({ sheet }) => sheet),
      ),
    );
  }

  private writeCells(member: "values" | "formulas", value: unknown): void {
    this.change(
      member,
      (area, workbook) => {
        const location = `Range.${member}`;
        workbook.requireUnlocked(area.sheet, location);
        const matrix = checkedMatrix(spread(value, area, workbook.habits), area, location);
        this.requests.traffic.cellsWritten += Array.isArray(value) ? area.rows * area.columns : 1;
        workbook.grid.makeRoom(area);
        for (const { cell, written } of cellsOf(area, matrix, location)) {
          checkContents(written, location);
          workbook.cells.write(cell, written);
        }
        if (typeof value === "string" && value.startsWith("=")) moveAlong(workbook, area);
      },
      value,
    );
  }

  /** Whole sheet rows or columns only: the grid moves nothing less. */
  insert(shift: Excel.InsertShiftDirection | "Down" | "Right"): Excel.Range {
    this.change("insert", (area, workbook) => {
      workbook.insertLines(area, shift === "Down" ? "ROW" : "COL");
    });
    return this.face;
  }

  delete(shift: Excel.DeleteShiftDirection | "Up" | "Left"): void {
    this.change("delete", (area, workbook) => {
      workbook.removeLines(area, shift === "Up" ? "ROW" : "COL");
    });
  }

  group(groupOption: Excel.GroupOption | "ByRows" | "ByColumns"): void {
    this.change("group", (area, { grid }) => {
      grid.do("GROUP_HEADERS", groupedBy(groupOption, area));
    });
  }

  hideGroupDetails(groupOption: Excel.GroupOption | "ByRows" | "ByColumns"): void {
    this.change("hideGroupDetails", (area, { grid }) => {
      grid.do("FOLD_HEADER_GROUP", groupedBy(groupOption, area));
    });
  }

  select(): void {
    this.requests.enqueue("look", "Range.select", () => {
      this.requests.workbookNow.select(this.live());
    });
  }

  /** Formats or formulas: the source's pattern is laid over this range, repeated as often as it fits. */
  copyFrom(
    sourceRange: Excel.Range | Excel.RangeAreas | string,
    copyType?: Excel.RangeCopyType | "All" | "Formulas" | "Values" | "Formats" | "Link",
  ): void {
    if (copyType !== "Formats" && copyType !== "Formulas")
      throw new ExcelError(
        "NotImplemented",
        `The stand-in copies formats or formulas, not ${copyType ?? "All"}.`,
        "Range.copyFrom",
      );
    const given = typeof sourceRange === "string" ? undefined : rangeTarget(sourceRange as Excel.Range);
    this.change("copyFrom", (area, workbook) => {
      workbook.requireUnlocked(area.sheet, "Range.copyFrom");
      const source = given === undefined ? workbook.area(sourceRange as string, area.sheet) : given();
      workbook.grid.makeRoom(area);
      mapArea(area, (cell) => {
        const from = {
          sheet: source.sheet,
          row: source.row + ((cell.row - area.row) % source.rows),
          column: source.column + ((cell.column - area.column) % source.columns),
        };
        if (copyType === "Formats") copyLook(workbook.grid, from, cell);
        else copyFormula(workbook, from, cell);
      });
    });
  }

  clear(
    applyTo?: Excel.ClearApplyTo | "All" | "Formats" | "Contents" | "Hyperlinks" | "RemoveHyperlinks" | "ResetContents",
  ): void {
    this.change("clear", (wanted, workbook) => {
      workbook.requireUnlocked(wanted.sheet, "Range.clear");
      const area = workbook.grid.clip(wanted);
      if (area === undefined) return;
      const target = [zoneOf(area)];
      if (applyTo !== "Contents") workbook.grid.do("CLEAR_FORMATTING", { sheetId: area.sheet, target });
      if (applyTo === "Formats") return;
      for (const cell of mapArea(area, (one) => one).flat()) {
        if (!workbook.cells.isBlank(cell)) workbook.grid.do("UPDATE_CELL", { ...positionOf(cell), content: "" });
      }
    });
  }
}

/** One formula for several cells is the first cell's, and moves along to the others as if it were copied. */
function moveAlong(workbook: Workbook, { sheet, row, column, ...size }: Area): void {
  const first = { sheet, row, column };
  const text = workbook.formulas.read(first);
  const isRelative = text !== undefined && text === workbook.formulas.gridText(first);
  if (!isRelative || workbook.habits.oneValue !== "fills every cell") return;
  mapArea({ ...first, ...size }, (cell) => {
    if (cell.row !== row || cell.column !== column) copyFormula(workbook, first, cell);
  });
}
