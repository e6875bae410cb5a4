import type { AreaPlan } from "../../joblog/model/plan.ts";
import type { CalculatedColumnState, TableState } from "../../state/workbook-state.ts";
import type { FileCell } from "./cells.ts";
import { piecesOf } from "./formulas/formula-pieces.ts";
import { shownFormula } from "./formulas/shown-formula.ts";
import { areaText, readArea } from "./read-address.ts";
import { unescaped } from "./texts.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** A table with its headings, which stand in its cells. */
export interface FileTable {
  readonly state: TableState;
  /** Header row included, a row of totals not. */
  readonly area: AreaPlan;
  readonly headers: readonly string[];
}

interface ListedColumn {
  readonly name: string;
  /** As Excel shows it; undefined for a column that is typed. */
  readonly formula: string | undefined;
}

/** The cells of a sheet by place. */
export type CellsByPlace = ReadonlyMap<string, FileCell>;

export function placeKey(row: number, column: number): string {
  return `${String(row)},${String(column)}`;
}

function listedColumns(table: XmlElement): readonly ListedColumn[] {
  return childrenOf(childOf(table, "tableColumns"), "tableColumn").map((column) => {
    const stored = childOf(column, "calculatedColumnFormula")?.text.trim() ?? "";
    return {
      name: unescaped(column.attributes["name"] ?? ""),
      formula: stored === "" ? undefined : shownFormula(unescaped(stored)),
    };
  });
}

/** A heading as its cell shows it; undefined where the cell is blank or worked out. */
function headingAt(cells: CellsByPlace, row: number, column: number): string | undefined {
  const cell = cells.get(placeKey(row, column));
  if (cell === undefined || cell.formula !== undefined || cell.value === undefined) return undefined;
  return typeof cell.value === "object" ? cell.value.error : String(cell.value);
}

function sameName(one: string | undefined, other: string): boolean {
  return one?.trim().toLowerCase() === other.trim().toLowerCase();
}

/**
 * The headings of a table. The cells are the truth: a writer is known that says of every table that it has no headings
 * and lists a part of its columns only. Undefined where the first row does hold rows.
 */
function headersOf(
  area: AreaPlan,
  listed: readonly ListedColumn[],
  saysNone: boolean,
  cells: CellsByPlace,
): readonly string[] | undefined {
  const shown = Array.from({ length: area.columns }, (_, index) => headingAt(cells, area.row, area.column + index));
  const isWhole = listed.length === area.columns;
  if (saysNone) {
    const areHeadings =
      shown.every((text) => text !== undefined) &&
      new Set(shown.map((text) => text.toLowerCase())).size === shown.length;
    const agree = isWhole && listed.every(({ name }, index) => sameName(shown[index], name));
    if (!areHeadings || (isWhole && !agree)) return undefined;
  }
  return shown.map(
    (text, index) => text ?? (isWhole ? listed[index]?.name : undefined) ?? `Column${String(index + 1)}`,
  );
}

/** Whether a formula names cells by their place in a way that another row would not share. */
function isRelative(formula: string): boolean {
  return piecesOf(formula).some(
    ({ kind, text }) => kind === "code" && /(?<![\w.$])\$?[A-Z]{1,3}[1-9]\d{0,6}(?![\w(.!])/.test(text),
  );
}

/** The last row of a column that holds a formula, for a formula that is another one in each row. */
function lastFormula(
  cells: CellsByPlace,
  area: AreaPlan,
  column: number,
): { readonly formula: string; readonly row: number } | undefined {
  for (let row = area.row + area.rows - 1; row > area.row; row -= 1) {
    const formula = cells.get(placeKey(row, column))?.formula;
    if (formula !== undefined) return { formula, row };
  }
  return undefined;
}

function calculatedColumn(
  header: string,
  formula: string,
  cells: CellsByPlace,
  area: AreaPlan,
  column: number,
): CalculatedColumnState {
  if (!isRelative(formula)) return { header, formula };
  return { header, ...(lastFormula(cells, area, column) ?? { formula, row: area.row + 1 }) };
}

/**
 * A table of a sheet. `lost` is told in words what of it is not taken over; undefined where it has no headings and stays
 * as plain cells.
 */
export function readTable(table: XmlElement, cells: CellsByPlace, lost: (what: string) => void): FileTable | undefined {
  const name = table.attributes["displayName"] ?? table.attributes["name"] ?? "";
  const whole = readArea(table.attributes["ref"] ?? "");
  if (name === "" || whole === undefined) {
    lost("a table whose name or place is missing (its cells stay)");
    return undefined;
  }
  const hasTotals = (numberOf(table.attributes["totalsRowCount"]) ?? 0) > 0;
  const area = hasTotals ? { ...whole, rows: whole.rows - 1 } : whole;
  const listed = listedColumns(table);
  const headers = headersOf(area, listed, table.attributes["headerRowCount"] === "0", cells);
  if (headers === undefined || area.rows < 2) {
    lost(`table ${name}, which has no headings: its cells stay as plain cells`);
    return undefined;
  }
  if (hasTotals) lost(`the row of totals of table ${name}: its cells stay below the table`);
  const filter = childOf(table, "autoFilter");
  if (filter !== undefined && filter.children.length > 0)
    lost(`the filter of table ${name}: the rows that it hid stay hidden`);
  const style = childOf(table, "tableStyleInfo")?.attributes ?? {};
  const formulas = new Map(listed.map((column) => [column.name.trim().toLowerCase(), column.formula]));
  return {
    area,
    headers,
    state: {
      name,
      area: areaText(area),
      style: style["name"] ?? "",
      headerRow: true,
      totalsRow: false,
      filterButtons: filter !== undefined,
      bandedRows: isOn(style["showRowStripes"]),
      bandedColumns: isOn(style["showColumnStripes"]),
      firstColumn: isOn(style["showFirstColumn"]),
      lastColumn: isOn(style["showLastColumn"]),
      calculated: headers.flatMap((header, index) => {
        const formula = formulas.get(header.trim().toLowerCase());
        return formula === undefined ? [] : [calculatedColumn(header, formula, cells, area, area.column + index)];
      }),
    },
  };
}
