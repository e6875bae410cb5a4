import { arithmeticAid } from "../../core/safety/cautions.ts";
import { linesOf } from "../../joblog/layout/line-breaks.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import type { CellPlan, SheetPlan, StyleId } from "../../joblog/model/plan.ts";

export interface PaperColumn {
  readonly header: string;
  readonly width: number;
  readonly numberFormat: string;
  readonly isWords: boolean;
}

export interface PaperTable {
  readonly caption: string;
  readonly columns: readonly PaperColumn[];
  readonly rows: readonly (readonly (RowValue | undefined)[])[];
}

interface PaperLine {
  readonly label: string;
  readonly value: RowValue;
  readonly numberFormat: string;
}

export interface Paper {
  readonly id: string;
  readonly name: string;
  readonly title: string;
  /** Under the title, a line each. */
  readonly words: readonly string[];
  readonly lines: readonly PaperLine[];
  readonly tables: readonly PaperTable[];
  readonly orientation: "portrait" | "landscape";
  readonly tabColor: string;
}

const titlePoints = 22;

/** Width of a printed line of words, in characters. */
const lineCharacters = { portrait: 110, landscape: 150 } as const;

/** Characters that print side by side at 8 of the 10 points, on Letter as on A4. */
const pageCharacters = { portrait: 130, landscape: 178 } as const;

/** Beside the characters of a column, in characters. */
const cellPadding = 5 / 7;

/** As wide as words and dates of the log need; only wider columns give way. */
const narrow = 11;

/** Widths that fit the page: what is too much is taken from the wide columns, in which words wrap. */
function fitted(widths: readonly number[], orientation: Paper["orientation"]): readonly number[] {
  const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
  const excess = sum(widths) + widths.length * cellPadding - pageCharacters[orientation];
  const beyond = sum(widths.map((width) => Math.max(0, width - narrow)));
  if (excess <= 0 || beyond === 0) return widths;
  const kept = Math.max(0, 1 - excess / beyond);
  return widths.map((width) => Math.min(width, narrow) + Math.max(0, width - narrow) * kept);
}

/** A sheet of values: title, lines, then tables one under another that share their columns. */
export function paperSheet(paper: Paper): SheetPlan {
  const cells: CellPlan[] = [];
  let row = 0;
  const put = (
    column: number,
    style: StyleId,
    value: RowValue,
    look: Pick<CellPlan, "align" | "numberFormat"> = {},
  ) => {
    cells.push({ row, column, style, kind: "value", value, ...look });
  };
  put(0, "title", paper.title);
  for (const line of paper.words.flatMap((words) => linesOf(words, lineCharacters[paper.orientation]))) {
    row += 1;
    put(0, "purpose", line);
  }
  row += 1;
  for (const { label, value, numberFormat } of paper.lines) {
    row += 1;
    put(0, "fieldLabel", label);
    put(1, "fieldStated", value, { align: "left", numberFormat });
  }
  let firstHeader: number | undefined;
  for (const { caption, columns, rows } of paper.tables) {
    row += 2;
    put(0, "caption", caption);
    row += 1;
    firstHeader ??= row;
    columns.forEach(({ header, isWords }, column) => {
      put(column, "headerComputed", header, isWords ? {} : { align: "right" });
    });
    for (const values of rows) {
      row += 1;
      columns.forEach(({ numberFormat, isWords }, column) => {
        const value = values[column];
        const look = { numberFormat, ...(isWords ? {} : { align: "right" as const }) };
        if (value === undefined) cells.push({ row, column, style: "computed", kind: "blank", ...look });
        else put(column, "computed", value, look);
      });
    }
  }
  const widths = paper.tables.map(({ columns }) => columns.map(({ width }) => width));
  const wanted = Array.from({ length: Math.max(2, ...widths.map(({ length }) => length)) }, (_, column) =>
    Math.max(...widths.map((one) => one[column] ?? 0), column === 0 && paper.lines.length > 0 ? 20 : 8),
  );
  const columnWidths = fitted(wanted, paper.orientation);
  const header = paper.tables.length === 1 ? firstHeader : undefined;
  return {
    id: paper.id,
    name: paper.name,
    tabColor: paper.tabColor,
    columnWidths,
    rowHeights: [{ row: 0, points: titlePoints }],
    cells,
    tables: [],
    validations: [],
    conditionalFormats: [],
    charts: [],
    frozenRows: header === undefined ? 0 : header + 1,
    orientation: paper.orientation,
    footer: arithmeticAid,
    ...(header === undefined ? {} : { titleRows: { first: header, last: header } }),
    lastPrintedColumn: columnWidths.length - 1,
    pagesWide: 1,
  };
}
