import { type Area, excelSize } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";

/** The area, or InvalidArgument where it would leave Excel's grid. */
function onSheet(area: Area): Area {
  const { row, column, rows, columns } = area;
  if (
    row < 0 ||
    column < 0 ||
    rows < 1 ||
    columns < 1 ||
    row + rows > excelSize.rows ||
    column + columns > excelSize.columns
  ) {
    throw invalidArgument("The range would reach beyond the sheet.", "Range");
  }
  return area;
}

/** The ranges that a range leads to. */
export abstract class RelatedRanges extends ClientObject<Area, Excel.Range> {
  private related(what: string, derive: (area: Area) => Area): Excel.Range {
    return this.requests.make.range(
      this.requests,
      partOf(this, what, (area) => onSheet(derive(area))),
    );
  }

  getRowsBelow(count = 1): Excel.Range {
    return this.related("rows below", (area) =>
      count > 0
        ? { ...area, row: area.row + area.rows, rows: count }
        : { ...area, row: area.row + area.rows + count, rows: -count },
    );
  }

  getResizedRange(deltaRows: number, deltaColumns: number): Excel.Range {
    return this.related("resized range", (area) => ({
      ...area,
      rows: area.rows + deltaRows,
      columns: area.columns + deltaColumns,
    }));
  }

  getOffsetRange(rowOffset: number, columnOffset: number): Excel.Range {
    return this.related("offset range", (area) => ({
      ...area,
      row: area.row + rowOffset,
      column: area.column + columnOffset,
    }));
  }

  getCell(row: number, column: number): Excel.Range {
    return this.related("cell", (area) => ({
      ...area,
      row: area.row + row,
      column: area.column + column,
      rows: 1,
      columns: 1,
    }));
  }

  getRow(row: number): Excel.Range {
    return this.related("row", (area) => ({ ...area, row: area.row + row, rows: 1 }));
  }

  getColumn(column: number): Excel.Range {
    return this.related("column", (area) => ({ ...area, column: area.column + column, columns: 1 }));
  }

  getLastRow(): Excel.Range {
    return this.related("last row", (area) => ({ ...area, row: area.row + area.rows - 1, rows: 1 }));
  }

  /** The smallest range that holds all filled cells, or a null object; formats alone fill no cell here. */
  getUsedRangeOrNullObject(): Excel.Range {
    return this.requests.make.range(this.requests, {
      ...partOf(this, "used range", (area, workbook) => workbook.usedPart(area)),
      orNull: () => true,
    });
  }

  getEntireColumn(): Excel.Range {
    return this.requests.make.range(
      this.requests,
      partOf(this, "columns", (area, workbook) => ({ ...area, row: 0, rows: workbook.grid.sizeOf(area.sheet).rows })),
    );
  }

  getEntireRow(): Excel.Range {
    return this.requests.make.range(
      this.requests,
      partOf(this, "rows", (area, workbook) => ({
        ...area,
        column: 0,
        columns: workbook.grid.sizeOf(area.sheet).columns,
      })),
    );
  }
}
