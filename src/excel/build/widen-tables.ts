/** New columns in tables that hold data, where the plan has them if nothing else is torn. */
import type { SheetPlan, TableColumnPlan } from "../../joblog/model/plan.ts";
import { LogProblem } from "../office-problems.ts";
import type { NarrowTable } from "./log-gaps.ts";
import type { SurveyedTable } from "./survey-workbook.ts";

/** Columns that go in side by side; `at` is a sheet column. */
export interface Insertion {
  readonly table: NarrowTable;
  readonly at: number;
  readonly columns: readonly TableColumnPlan[];
  /** Whole sheet columns are inserted, else blank cells beside the table are taken in. */
  readonly wholeColumns: boolean;
}

/** Runs of missing columns, each after the column that the plan has before it. */
function runs({
  plan,
  found,
  missing,
}: NarrowTable): readonly { readonly at: number; readonly columns: readonly TableColumnPlan[] }[] {
  const done: { at: number; columns: TableColumnPlan[] }[] = [];
  let at = found.area.column + found.area.columns;
  for (const column of plan.columns) {
    const present = found.headers.indexOf(column.header);
    if (present >= 0) at = found.area.column + present + 1;
    else {
      const open = done.find((run) => run.at === at);
      if (open === undefined) done.push({ at, columns: [column] });
      else open.columns.push(column);
    }
  }
  return missing.length === 0 ? [] : done;
}

function tears(at: number, table: NarrowTable, others: readonly SurveyedTable[]): boolean {
  return others.some(
    ({ name, sheet, area }) =>
      sheet === table.found.sheet && name !== table.found.name && at > area.column && at < area.column + area.columns,
  );
}

/** Right to left, so that each place still counts when its turn comes. */
export function planInsertions(narrow: readonly NarrowTable[], tables: readonly SurveyedTable[]): readonly Insertion[] {
  return narrow
    .flatMap((table): readonly Insertion[] => {
      const whole = runs(table);
      if (whole.every(({ at }) => !tears(at, table, tables)))
        return whole.map(({ at, columns }) => ({ table, at, columns, wholeColumns: true }));
      const { area } = table.found;
      return [
        {
          table,
          at: area.column + area.columns,
          columns: whole.flatMap(({ columns }) => columns),
          wholeColumns: false,
        },
      ];
    })
    .sort((a, b) => b.at - a.at);
}

/** One read trip, if a table must take in the cells to its right: they must be blank. */
export async function checkRoomBeside(context: Excel.RequestContext, insertions: readonly Insertion[]): Promise<void> {
  const grounds = insertions
    .filter(({ wholeColumns }) => !wholeColumns)
    .map(({ table, at, columns }) => {
      const { row, rows } = table.found.area;
      return {
        table,
        range: context.workbook.worksheets
          .getItem(table.found.sheet)
          .getRangeByIndexes(row, at, rows, columns.length)
          .load("values"),
      };
    });
  if (grounds.length === 0) return;
  await context.sync();
  const taken = grounds.find(({ range }) => range.values.some((line) => line.some((value) => value !== "")));
  if (taken === undefined) return;
  throw new LogProblem({
    what: `The table ${taken.table.found.name} needs more columns, and the cells to its right on sheet ${taken.table.found.sheet} are not blank. Nothing was changed.`,
    remedy: "Move what stands there to another sheet or below the tables, then try again.",
  });
}

function widthOf(sheet: SheetPlan, { plan }: NarrowTable, column: TableColumnPlan): number {
  return sheet.columnWidths[plan.area.column + plan.columns.indexOf(column)] ?? 10;
}

/** Headers only; formulas follow when every table has its columns. Gives the width in characters of each new sheet column. */
export function insertColumns(context: Excel.RequestContext, insertions: readonly Insertion[]): void {
  for (const { table, at, columns, wholeColumns } of insertions) {
    const { area, sheet, name } = table.found;
    const worksheet = context.workbook.worksheets.getItem(sheet);
    if (wholeColumns) worksheet.getRangeByIndexes(0, at, 1, columns.length).getEntireColumn().insert("Right");
    if (at === area.column + area.columns) {
      context.workbook.tables
        .getItem(name)
        .resize(worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns + columns.length));
    }
    worksheet.getRangeByIndexes(area.row, at, 1, columns.length).values = [columns.map(({ header }) => header)];
  }
}

/** Widths of inserted sheet columns by column id; cells that were there before keep theirs. */
export function insertedWidths(
  sheet: SheetPlan,
  insertions: readonly Insertion[],
): readonly { readonly table: string; readonly id: string; readonly characters: number }[] {
  return insertions
    .filter(({ table, wholeColumns }) => wholeColumns && sheet.tables.includes(table.plan))
    .flatMap(({ table, columns }) =>
      columns.map((column) => ({ table: table.plan.name, id: column.id, characters: widthOf(sheet, table, column) })),
    );
}
