/** Rows of settled baths, which hold values where their columns have formulas that call functions. */
import { callingColumns, settledTables } from "../../joblog/formula/calling-columns.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { TableColumnPlan, TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import { folded } from "../../joblog/model/same-text.ts";
import type { Survey, SurveyedTable } from "./survey-workbook.ts";

/** A column of Baths as it stood, to bring it back. */
interface MarkColumn {
  readonly table: string;
  readonly header: string;
  readonly cells: readonly unknown[];
  /** The baths' names, by row. */
  readonly keys: readonly unknown[];
}

export interface SettledRows {
  readonly baths: readonly string[];
  /** The cells of Baths that say so. */
  readonly marks: readonly MarkColumn[];
  /** What the last data row holds, by table: it keeps its formulas when its bath is settled. */
  readonly lastRow: ReadonlyMap<string, readonly unknown[]>;
  /** Whether a cell was settled, by table, heading and data row. */
  readonly isSettled: (table: string, header: string, row: number) => boolean;
}

const markIds = ["settledAt", "settledBy"] as const;

interface Found {
  readonly plan: TablePlan;
  readonly found: SurveyedTable;
  readonly calling: ReadonlySet<string>;
}

function tablesThere(plan: WorkbookPlan, survey: Survey): readonly Found[] {
  return settledTables(jobLog).flatMap((table): readonly Found[] => {
    const planned = plan.sheets.flatMap(({ tables }) => tables).find(({ id }) => id === table.id);
    const found = survey.tables.find(({ name }) => name === planned?.name);
    if (planned === undefined || found === undefined) return [];
    return [{ plan: planned, found, calling: callingColumns(table, jobLog) }];
  });
}

const headerOf = ({ plan }: Found, id: string): string => plan.columns.find((column) => column.id === id)?.header ?? "";

function loadColumn(context: Excel.RequestContext, table: Found, id: string): Excel.Range | undefined {
  const header = headerOf(table, id);
  if (!table.found.headers.includes(header)) return undefined;
  return context.workbook.tables.getItem(table.found.name).columns.getItem(header).getDataBodyRange().load("values");
}

const cellsOf = (range: Excel.Range | undefined): readonly unknown[] =>
  (range?.values ?? []).map(([cell]): unknown => cell);

/** Undefined for a log in which no bath is settled. */
export async function readSettledRows(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
  survey: Survey,
): Promise<SettledRows | undefined> {
  const there = tablesThere(plan, survey);
  const baths = there.find((table) => table.plan.id === "baths");
  if (baths === undefined || !baths.found.headers.includes(headerOf(baths, markIds[0]))) return undefined;
  const names = loadColumn(context, baths, "bath");
  const marked = markIds.map((id) => ({ header: headerOf(baths, id), range: loadColumn(context, baths, id) }));
  await context.sync();
  const keys = cellsOf(names);
  const marks = marked.flatMap(({ header, range }) =>
    range === undefined ? [] : [{ table: baths.found.name, header, cells: cellsOf(range), keys }],
  );
  const settled = keys.map(String).filter((_, row) => marks.some(({ cells }) => cells[row] !== ""));
  if (settled.length === 0) return undefined;
  const wanted = new Set(settled.map(folded));
  const loaded = there.map((table) => ({
    table,
    of: loadColumn(context, table, "bath"),
    last: context.workbook.tables.getItem(table.found.name).getDataBodyRange().getLastRow().load("formulas"),
  }));
  await context.sync();
  const byTable = new Map(
    loaded.map(({ table, of }) => [
      table.found.name,
      {
        headers: new Set([...table.calling].map((id) => headerOf(table, id))),
        rows: cellsOf(of).map((bath) => wanted.has(folded(String(bath)))),
      },
    ]),
  );
  return {
    baths: settled,
    marks,
    lastRow: new Map(loaded.map(({ table, last }) => [table.found.name, last.formulas[0] ?? []])),
    isSettled: (table, header, row) => {
      const one = byTable.get(table);
      return one?.headers.has(header) === true && one.rows[row] === true;
    },
  };
}

/** Whether the column is one whose cells were settled. */
export const isSettledColumn = (table: Pick<TablePlan, "id">, { id }: Pick<TableColumnPlan, "id">): boolean => {
  const definition = settledTables(jobLog).find((one) => one.id === table.id);
  return definition !== undefined && callingColumns(definition, jobLog).has(id);
};

/** Where formulas come back to all of the rows, no bath is settled any more. */
export function clearMarks(context: Excel.RequestContext, { marks }: SettledRows): void {
  for (const { table, header, cells } of marks)
    context.workbook.tables.getItem(table).columns.getItem(header).getDataBodyRange().values = cells.map(() => [""]);
}
