import { LogProblem, problemFrom } from "../office-problems.ts";

/** The part of a sheet that is read: more is more than a person can look through here, and than Excel hands over at once. */
export const mostRows = 5000;
export const mostColumns = 60;

/** A sheet's cells as they are, text as text, dates as serial numbers. Nothing of the sheet is changed. */
export interface SheetReading {
  readonly name: string;
  /** Row number and column number of the first cell read, counted from 1 and from 0. */
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly values: readonly (readonly unknown[])[];
  /** Rows and columns that hold something and were not read. */
  readonly rowsLeftOut: number;
  readonly columnsLeftOut: number;
}

/** Reads the sheet that is open in Excel, at most `mostRows` by `mostColumns` cells. Rejects with a LogProblem for a blank one. */
export async function readActiveSheet(): Promise<SheetReading> {
  try {
    return await Excel.run(async (context) => {
      const worksheet = context.workbook.worksheets.getActiveWorksheet().load("name");
      const used = worksheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      if (used.isNullObject)
        throw new LogProblem({
          what: `The sheet ${worksheet.name} is blank.`,
          remedy: "Click the tab of the sheet that you want to adopt, then read it again.",
        });
      const { rowIndex, columnIndex, rowCount, columnCount } = used;
      const [rows, columns] = [Math.min(rowCount, mostRows), Math.min(columnCount, mostColumns)];
      const cells = worksheet.getRangeByIndexes(rowIndex, columnIndex, rows, columns).load("values");
      await context.sync();
      return {
        name: worksheet.name,
        firstRow: rowIndex + 1,
        firstColumn: columnIndex,
        values: cells.values as readonly (readonly unknown[])[],
        rowsLeftOut: rowCount - rows,
        columnsLeftOut: columnCount - columns,
      };
    });
  } catch (error) {
    throw problemFrom(error);
  }
}
