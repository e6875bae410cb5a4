import type { SheetReading } from "../../../../src/excel/read/read-active-sheet.ts";
import type { AdoptAnswers } from "../../../../src/pane/adopt/adopt-answers.ts";
import { type SheetTable, tableBelow } from "../../../../src/pane/adopt/sheet-table.ts";

export function readingOf(values: readonly (readonly unknown[])[]): SheetReading {
  return { name: "pH log", firstRow: 1, firstColumn: 0, values, rowsLeftOut: 0, columnsLeftOut: 0 };
}

export function sheetOf(headings: readonly string[], ...rows: readonly (readonly unknown[])[]): SheetTable {
  return tableBelow(readingOf([headings, ...rows]), 0);
}

export const blankAnswers: AdoptAnswers = {
  table: "readings",
  columns: {},
  units: {},
  same: {},
  order: undefined,
  dotTime: undefined,
  usualTime: "",
  usualTime2: "",
  asAbove: {},
  unitWords: {},
  names: {},
  newBath: { tank: "T1", water: "RO", concentrate: "CN-1", strength: "1+28" },
};
