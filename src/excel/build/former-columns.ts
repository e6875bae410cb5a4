/** Computed columns as they were before they are written anew: to bring them back, and to tell what stood over a formula. */
import { type Column, inTrips } from "./pieces.ts";
import type { Survey, SurveyedTable } from "./survey-workbook.ts";
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

/** A column that will get its formula anew, as the survey found its table. */
interface Asked {
  readonly table: SurveyedTable;
  readonly header: string;
  readonly cells: unknown[];
}

function askedColumns(formulas: readonly SheetFormulas[], tables: readonly SurveyedTable[]): readonly Column<Asked>[] {
  return formulas
    .flatMap(({ columns }) => columns)
    .flatMap(({ table: plan, column: { header, formula } }): readonly Column<Asked>[] => {
      const table = tables.find(({ name }) => name === plan.name);
      const at = table?.headers.indexOf(header) ?? -1;
      if (table === undefined || at < 0) return [];
      const width = Math.max(formula.length, String(table.firstRow[at]).length);
      return [{ item: { table, header, cells: [] }, rows: table.area.rows - 1, width }];
    });
}

function firstOf(line: readonly unknown[]): unknown {
  return line[0];
}

async function readKeys(
  context: Excel.RequestContext,
  asked: readonly Column<Asked>[],
): Promise<ReadonlyMap<string, readonly unknown[]>> {
  const names = [...new Set(asked.map(({ item }) => item.table.name))];
  const ranges = names.map((name) => {
    const keys = context.workbook.tables.getItem(name).getDataBodyRange().getColumn(0).load("values");
    return { name, keys };
  });
  await context.sync();
  return new Map(ranges.map(({ name, keys }) => [name, keys.values.map(firstOf)]));
}

/** The columns of tables that are there and will get their formula anew, in trips that Excel gives. */
export async function readFormerColumns(
  context: Excel.RequestContext,
  formulas: readonly SheetFormulas[],
  survey: Survey,
): Promise<readonly FormerColumn[]> {
  const asked = askedColumns(formulas, survey.tables);
  if (asked.length === 0) return [];
  const keys = await readKeys(context, asked);
  for (const trip of inTrips(asked)) {
    const ranges = trip.map(({ item, first, rows }) => {
      const body = context.workbook.tables.getItem(item.table.name).columns.getItem(item.header).getDataBodyRange();
      return {
        item,
        range: body
          .getRow(first)
          .getResizedRange(rows - 1, 0)
          .load("formulas"),
      };
    });
    // oxlint-disable-next-line office-addins/no-context-sync-in-loop -- one trip carries only so much
    await context.sync();
    for (const { item, range } of ranges) item.cells.push(...range.formulas.map(firstOf));
  }
  return asked.map(({ item: { table, header, cells } }) => ({
    table: table.name,
    header,
    cells,
    keys: keys.get(table.name) ?? [],
  }));
}

/** Cells that held something other than a formula, for another reason than that their bath was settled. */
export function replacedIn(
  former: readonly FormerColumn[],
  isSettled: (table: string, header: string, row: number) => boolean,
): readonly Replaced[] {
  return former.flatMap(({ table, header, cells, keys }) =>
    cells.flatMap((cell, at): Replaced[] => {
      const text = String(cell);
      if (text === "" || text.startsWith("=") || isSettled(table, header, at)) return [];
      const key = String(keys[at]);
      return [{ table, header, row: key === "" ? `row ${String(at + 1)}` : key, value: text }];
    }),
  );
}
