/** Old forms write a date, a tank or a claim once and leave it blank, or merged, in the rows beneath. */
import type { AdoptAnswers } from "./adopt-answers.ts";
import { isBlankCell } from "./cell-words.ts";
import type { SheetTable } from "./sheet-table.ts";

const written = ["when", "date", "time", "bath", "tank", "claim"] as const;

export interface BlankColumn {
  readonly id: string;
  readonly heading: string;
  readonly blanks: number;
}

/** Mapped columns with blank cells beneath filled ones. */
export function blankColumns(sheet: SheetTable, { columns }: AdoptAnswers): readonly BlankColumn[] {
  return written.flatMap((id) => {
    const at = columns[id];
    if (at === undefined) return [];
    const first = sheet.rows.findIndex(({ cells }) => !isBlankCell(cells[at]));
    const blanks = first < 0 ? 0 : sheet.rows.slice(first).filter(({ cells }) => isBlankCell(cells[at])).length;
    return blanks === 0 ? [] : [{ id, heading: sheet.headings[at] ?? "", blanks }];
  });
}

/** The sheet with those blanks filled from above that the person says mean the same as above. */
export function filledDown(sheet: SheetTable, { columns, asAbove }: AdoptAnswers): SheetTable {
  const places = written.flatMap((id) => (asAbove[id] === true ? (columns[id] ?? []) : []));
  if (places.length === 0) return sheet;
  const above = new Map<number, unknown>();
  const rows = sheet.rows.map((row) => {
    const cells = [...row.cells];
    for (const at of places) {
      if (isBlankCell(cells[at])) cells[at] = above.get(at) ?? "";
      else above.set(at, cells[at]);
    }
    return { ...row, cells };
  });
  return { ...sheet, rows };
}
