import { csvText, harmless } from "../../advice/books/csv-text.ts";
import { toThirteenDigits } from "../../core/numeric/to-thirteen-digits.ts";
import { writeWorkbook } from "../../files/xlsx-writer.ts";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type { Database, DatabaseValue } from "./database.ts";
import { type Figure, type FigureColumn, figures } from "./figures.ts";
import type { Gathered } from "./gather.ts";

type Cell = string | number | undefined;

interface GroupColumn {
  readonly header: string;
  readonly format?: string;
  readonly width: number;
}

/** A table of the workbook with its rows. */
export interface GroupTable {
  readonly id: string;
  readonly name: string;
  readonly purpose: string;
  readonly columns: readonly GroupColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

const money = "#,##0.00";

const formats: Readonly<Record<FigureColumn["look"], string | undefined>> = {
  text: undefined,
  money,
  count: "0.##",
  number: "0.00",
  share: "0.0%",
};

function shown(value: DatabaseValue | undefined, { name, look }: FigureColumn): Cell {
  if (value === undefined) throw new RangeError(`A query gives no column ${name}.`);
  if (value === null) return undefined;
  if (look === "text") return String(value);
  const number = Number(value);
  return look === "money" ? Math.round(number) / 100 : toThirteenDigits(number);
}

async function tableOf(figure: Figure, query: string, database: Database): Promise<GroupTable> {
  const rows = await database.read(query);
  return {
    id: figure.id,
    name: figure.name,
    purpose: figure.purpose,
    columns: figure.columns.map(({ header, look, width }) => {
      const format = formats[look];
      return { header, width, ...(format === undefined ? {} : { format }) };
    }),
    rows: rows.map((row) => figure.columns.map((column) => shown(row[column.name], column))),
  };
}

function exceptionsOf({ leftOut }: Gathered): GroupTable {
  return {
    id: "Exceptions",
    name: "Exceptions",
    purpose: "What the totals leave out or cannot be sure of: the file, the sheet, the row and why.",
    columns: [
      { header: "File", width: 34 },
      { header: "Sheet", width: 14 },
      { header: "Row", width: 8 },
      { header: "Reason", width: 80 },
    ],
    rows: leftOut.map(({ file, sheet, row, reason }) => [file, sheet, row, reason]),
  };
}

function filesOf({ read, refused, leftOut }: Gathered): GroupTable {
  return {
    id: "Files",
    name: "Files",
    purpose: "How much the totals rest on.",
    columns: [
      { header: "What", width: 44 },
      { header: "Count", format: "0", width: 10 },
    ],
    rows: [
      ["Logs read and added up", read],
      ["Files left out as a whole", refused],
      ["Exceptions in all", leftOut.length],
    ],
  };
}

/** All tables of the group's workbook. `queryOf` gives the text of a query by its name. */
export async function groupTables(
  gathered: Gathered,
  database: Database,
  queryOf: (name: string) => Promise<string>,
): Promise<readonly GroupTable[]> {
  const tables: GroupTable[] = [];
  for (const figure of figures) tables.push(await tableOf(figure, await queryOf(figure.query), database));
  return [filesOf(gathered), ...tables, exceptionsOf(gathered)];
}

const headerRow = 3;

function sheetOf({ id, name, purpose, columns, rows }: GroupTable): SheetPlan {
  const lines = rows.length === 0 ? [[]] : rows;
  const cells: CellPlan[] = [
    { row: 0, column: 0, style: "title", kind: "value", value: name },
    { row: 1, column: 0, style: "purpose", kind: "value", value: purpose },
    ...columns.map(({ header }, column): CellPlan => ({
      row: headerRow,
      column,
      style: "headerComputed",
      kind: "value",
      value: header,
    })),
    ...lines.flatMap((line, at) =>
      columns.map(({ format }, column): CellPlan => {
        const value = line[column];
        const place = { row: headerRow + 1 + at, column, style: "computed" as const };
        const look = format === undefined ? place : { ...place, numberFormat: format };
        return value === undefined ? { ...look, kind: "blank" } : { ...look, kind: "value", value };
      }),
    ),
  ];
  return {
    id,
    name,
    tabColor: "#1F4E57",
    columnWidths: columns.map(({ width }) => width),
    rowHeights: [],
    cells,
    tables: [
      {
        id,
        name: id,
        area: { row: headerRow, column: 0, rows: lines.length + 1, columns: columns.length },
        columns: columns.map(({ header, format }) => ({
          id: header,
          header,
          style: "computed" as const,
          ...(format === undefined ? {} : { numberFormat: format }),
        })),
      },
    ],
    validations: [],
    conditionalFormats: [],
    charts: [],
    frozenRows: headerRow + 1,
    orientation: "landscape",
    footer: name,
    titleRows: { first: headerRow, last: headerRow },
    lastPrintedColumn: columns.length - 1,
    pagesWide: 1,
  };
}

/** The group's figures as an .xlsx file; the same figures give the same bytes. */
export function groupWorkbook(tables: readonly GroupTable[]): Promise<Uint8Array> {
  const plan: WorkbookPlan = { version: 1, released: {}, sheets: tables.map(sheetOf), names: [] };
  return writeWorkbook(plan, () => undefined);
}

const csvCell = (value: Cell, { format }: GroupColumn): string => {
  if (typeof value !== "number") return harmless(value ?? "");
  return format === money ? value.toFixed(2) : String(value);
};

/** The same tables as CSV files, by name. */
export function groupCsv(tables: readonly GroupTable[]): readonly { readonly name: string; readonly text: string }[] {
  return tables.map(({ id, columns, rows }) => ({
    name: `${id}.csv`,
    text: csvText([
      columns.map(({ header }) => header),
      ...rows.map((row) => columns.map((column, at) => csvCell(row[at], column))),
    ]),
  }));
}
