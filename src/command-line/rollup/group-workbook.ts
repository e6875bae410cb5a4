import { csvText, harmless } from "../../advice/books/csv-text.ts";
import { toThirteenDigits } from "../../core/numeric/to-thirteen-digits.ts";
import { writeWorkbook } from "../../files/xlsx-writer.ts";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type { LeftOut, Line, Measure } from "./log-lines.ts";
import { type Grouping, groupings, totalsOf } from "./totals.ts";

/** What was read, and what was not. */
export interface Group {
  readonly lines: readonly Line[];
  readonly leftOut: readonly LeftOut[];
  readonly read: number;
  readonly refused: number;
}

type Cell = string | number | undefined;

interface GroupColumn {
  readonly header: string;
  readonly format?: string;
  readonly width: number;
}

interface GroupTable {
  readonly id: string;
  readonly name: string;
  readonly purpose: string;
  readonly columns: readonly GroupColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

const money = "#,##0.00";

const measureColumns: Readonly<Record<Measure, GroupColumn>> = {
  cost: { header: "Cost of baths", format: money, width: 14 },
  claimCost: { header: "Paid by claims", format: money, width: 14 },
  loads: { header: "Loads", format: "0", width: 9 },
  baskets: { header: "Baskets", format: "0", width: 9 },
  concentrate: { header: "Concentrate, L", format: "0.00", width: 13 },
  topUps: { header: "Top-ups", format: "0", width: 9 },
  pieces: { header: "Pieces", format: "0", width: 9 },
  restored: { header: "Pieces restored", format: "0", width: 10 },
  unpriced: { header: "Left out: rows without a cost", format: "0", width: 14 },
  uncounted: { header: "Left out: rows without a number", format: "0", width: 14 },
  provisional: { header: "Claims still provisional", format: "0", width: 12 },
};

const inMoney: readonly Measure[] = ["cost", "claimCost"];

const shown = (measure: Measure, amount = 0): number =>
  inMoney.includes(measure) ? amount / 100 : toThirteenDigits(amount);

/** Quotients are made of whole totals, and of nothing where a part of them is left out. */
function costPerBasket({ cost = 0, baskets = 0, unpriced = 0, uncounted = 0 }: Partial<Record<Measure, number>>): Cell {
  return baskets > 0 && unpriced === 0 && uncounted === 0 ? Math.round(cost / baskets) / 100 : undefined;
}

function tableOf(grouping: Grouping, lines: readonly Line[]): GroupTable {
  const perBasket = grouping.measures.includes("cost") && grouping.measures.includes("baskets");
  return {
    id: grouping.id,
    name: grouping.name,
    purpose:
      "Worked out anew from what is typed in the logs. Amounts in different currencies stand in lines of their own.",
    columns: [
      ...grouping.by.map(({ label }) => ({ header: label, width: 22 })),
      { header: "Currency", width: 10 },
      ...grouping.measures.map((measure) => measureColumns[measure]),
      ...(perBasket ? [{ header: "Cost per basket", format: money, width: 11 }] : []),
    ],
    rows: totalsOf(lines, grouping).map(({ keys, currency, amounts }) => [
      ...keys,
      currency,
      ...grouping.measures.map((measure) => shown(measure, amounts[measure])),
      ...(perBasket ? [costPerBasket(amounts)] : []),
    ]),
  };
}

function exceptionsOf({ leftOut }: Group): GroupTable {
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

function filesOf({ read, refused, leftOut }: Group): GroupTable {
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

function tablesOf(group: Group): readonly GroupTable[] {
  return [filesOf(group), ...groupings.map((grouping) => tableOf(grouping, group.lines)), exceptionsOf(group)];
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
export function groupWorkbook(group: Group): Promise<Uint8Array> {
  const plan: WorkbookPlan = { version: 1, released: {}, sheets: tablesOf(group).map(sheetOf), names: [] };
  return writeWorkbook(plan, () => undefined);
}

const csvCell = (value: Cell, { format }: GroupColumn): string => {
  if (typeof value !== "number") return harmless(value ?? "");
  return format === money ? value.toFixed(2) : String(value);
};

/** The same tables as CSV files, by name. */
export function groupCsv(group: Group): readonly { readonly name: string; readonly text: string }[] {
  return tablesOf(group).map(({ id, columns, rows }) => ({
    name: `${id}.csv`,
    text: csvText([
      columns.map(({ header }) => header),
      ...rows.map((row) => columns.map((column, at) => csvCell(row[at], column))),
    ]),
  }));
}
