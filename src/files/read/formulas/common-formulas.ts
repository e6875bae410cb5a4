import type { CalculatedColumnState, SheetState, TableState, WorkbookState } from "../../../state/workbook-state.ts";
import { readArea } from "../read-address.ts";

/** What stands in a column of a table below its heading. */
interface ColumnContent {
  readonly header: string;
  filled: number;
  /** How often each formula, by its number, stands there. */
  readonly formulas: Map<number, number>;
}

function columnsOf(sheet: SheetState, table: TableState): readonly ColumnContent[] {
  const area = readArea(table.area);
  if (area === undefined) return [];
  const columns = Array.from({ length: area.columns }, (): ColumnContent => ({
    header: "",
    filled: 0,
    formulas: new Map(),
  }));
  const at = (row: number, column: number): ColumnContent | undefined =>
    row > area.row && row < area.row + area.rows ? columns[column - area.column] : undefined;
  const headers = new Map(
    sheet.typed.filter(([row]) => row === area.row).map(([, column, , value]) => [column, value]),
  );
  for (const [row, column] of sheet.typed) {
    const content = at(row, column);
    if (content !== undefined) content.filled += 1;
  }
  for (const [row, column, , formula] of sheet.worked) {
    const content = at(row, column);
    if (content === undefined) continue;
    content.filled += 1;
    content.formulas.set(formula, (content.formulas.get(formula) ?? 0) + 1);
  }
  return columns.map((content, index) => {
    const header = headers.get(area.column + index);
    return { ...content, header: typeof header === "string" ? header : "" };
  });
}

/** A column whose filled rows mostly hold one formula; a row that someone typed over does not change that. */
function calculatedOf(
  { header, filled, formulas }: ColumnContent,
  sheet: SheetState,
): readonly CalculatedColumnState[] {
  const [common] = [...formulas].find(([, count]) => count * 2 > filled) ?? [];
  const formula = common === undefined ? undefined : sheet.formulas[common];
  return formula === undefined || header === "" ? [] : [{ header, formula }];
}

/**
 * The workbook with calculated columns found again, where the program that saved it left out which they are: none of its
 * tables has one. Says how many were found.
 */
export function withCommonFormulas(state: WorkbookState): { readonly state: WorkbookState; readonly found: number } {
  const tables = state.sheets.flatMap((sheet) => sheet.tables);
  if (tables.some(({ calculated }) => calculated.length > 0)) return { state, found: 0 };
  let found = 0;
  const sheets = state.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.map((table) => {
      const calculated = columnsOf(sheet, table).flatMap((column) => calculatedOf(column, sheet));
      found += calculated.length;
      return { ...table, calculated };
    }),
  }));
  return { state: { ...state, sheets }, found };
}
