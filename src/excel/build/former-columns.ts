/** Computed columns as they were before they are written anew: to bring them back, and to tell what stood over a formula. */
import type { TableColumnPlan, TablePlan } from "../../joblog/model/plan.ts";
import type { Survey } from "./survey-workbook.ts";
import type { SheetFormulas } from "./write-computed.ts";

export interface FormerColumn {
  readonly table: string;
  readonly header: string;
  /** Formulas, and what was typed over one, by row. */
  readonly cells: readonly unknown[];
  /** The first column, which says which row is which. */
  readonly keys: readonly unknown[];
}

/** Something typed that a formula has taken the place of. */
export interface Replaced {
  readonly table: string;
  readonly header: string;
  /** The row's first cell; where that is blank, the row's number in the table. */
  readonly row: string;
  readonly value: string;
}

async function readTable(
  context: Excel.RequestContext,
  table: TablePlan,
  columns: readonly TableColumnPlan[],
): Promise<readonly FormerColumn[]> {
  const found = context.workbook.tables.getItem(table.name);
  const keys = found.getDataBodyRange().getColumn(0).load("values");
  const ranges = columns.map(({ header }) => ({
    header,
    range: found.columns.getItem(header).getDataBodyRange().load("formulas"),
  }));
  await context.sync();
  const first = (line: readonly unknown[]): unknown => line[0];
  return ranges.map(({ header, range }) => ({
    table: table.name,
    header,
    cells: range.formulas.map(first),
    keys: keys.values.map(first),
  }));
}

/** The columns of tables that are there and will get their formula anew; one trip a table, as a trip carries only so much. */
export async function readFormerColumns(
  context: Excel.RequestContext,
  formulas: readonly SheetFormulas[],
  survey: Survey,
): Promise<readonly FormerColumn[]> {
  const former: FormerColumn[] = [];
  for (const { name, headers } of survey.tables) {
    const columns = formulas
      .flatMap((one) => one.columns)
      .filter(({ table, column }) => table.name === name && headers.includes(column.header));
    const [first] = columns;
    if (first !== undefined)
      former.push(
        ...(await readTable(
          context,
          first.table,
          columns.map(({ column }) => column),
        )),
      );
  }
  return former;
}

/** Cells that held something other than a formula. */
export function replacedIn(former: readonly FormerColumn[]): readonly Replaced[] {
  return former.flatMap(({ table, header, cells, keys }) =>
    cells.flatMap((cell, at): Replaced[] => {
      const text = String(cell);
      if (text === "" || text.startsWith("=")) return [];
      const key = String(keys[at]);
      return [{ table, header, row: key === "" ? `row ${String(at + 1)}` : key, value: text }];
    }),
  );
}
