import { jobLog } from "../../joblog/job-log.ts";
import type { AreaPlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import { findField } from "../../joblog/model/references.ts";
import { folded } from "../../joblog/model/same-text.ts";
import { LogProblem } from "../office-problems.ts";
import { refuseForeignNames, refuseForeignTables } from "./foreign-tables.ts";
import type { WorkbookSurvey } from "./plan-placement.ts";

const versionName = findField(jobLog, "logVersion").name;

/** A table of the workbook, the log's or the shop's own, by the plan's spelling of its name where Excel takes it for one of the plan's. */
export interface SurveyedTable {
  readonly name: string;
  readonly sheet: string;
  /** Header row and data rows. */
  readonly area: AreaPlan;
  readonly headers: readonly string[];
  /** What the first data row holds. */
  readonly firstRow: readonly unknown[];
  readonly filtered: boolean;
}

/** A named cell of the log. */
interface SurveyedCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: unknown;
}

export interface Survey extends WorkbookSurvey {
  /** Undefined where no cell says it. */
  readonly version: number | undefined;
  readonly tables: readonly SurveyedTable[];
  readonly cells: ReadonlyMap<string, SurveyedCell>;
  readonly protectedSheets: ReadonlySet<string>;
  /** Whether the workbook lets no sheet be added. */
  readonly structureLocked: boolean;
}

interface LoadedTable {
  readonly table: Excel.Table;
  readonly range: Excel.Range;
  readonly headers: Excel.Range;
  readonly firstRow: Excel.Range;
}

/** Without filter buttons nothing is filtered, and no document says what Excel answers when it is asked then. */
function loadTable(table: Excel.Table): LoadedTable {
  if (table.showFilterButton) table.autoFilter.load("isDataFiltered");
  table.worksheet.load("name");
  return {
    table,
    range: table.getRange().load("rowIndex,columnIndex,rowCount,columnCount"),
    headers: table.getHeaderRowRange().load("values"),
    firstRow: table.getDataBodyRange().getRow(0).load("formulas"),
  };
}

/** The names wanted, by what Excel compares of them. */
const spellings = (names: readonly string[]): ReadonlyMap<string, string> =>
  new Map(names.map((name) => [folded(name), name]));

function surveyed(
  { table, range, headers, firstRow }: LoadedTable,
  planned: ReadonlyMap<string, string>,
): SurveyedTable {
  return {
    name: planned.get(folded(table.name)) ?? table.name,
    sheet: table.worksheet.name,
    area: { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount },
    headers: (headers.values[0] ?? []).map(String),
    firstRow: firstRow.formulas[0] ?? [],
    filtered: table.showFilterButton && table.autoFilter.isDataFiltered,
  };
}

/** Reads what of the plan the workbook holds already, and where: one trip for a workbook without tables and names, else two. */
export async function surveyWorkbook(context: Excel.RequestContext, plan: WorkbookPlan): Promise<Survey> {
  const { workbook } = context;
  workbook.load("readOnly");
  workbook.protection.load("protected");
  workbook.worksheets.load("items/name,items/protection/protected");
  workbook.tables.load("items/name,items/showFilterButton");
  workbook.names.load("items/name,items/value");
  await context.sync();
  if (workbook.readOnly) {
    throw new LogProblem({
      what: "This workbook is open for reading only.",
      remedy: "Save a copy (File, Save a Copy) and build the log there.",
    });
  }
  const planned = plan.sheets.flatMap((sheet) => sheet.tables);
  const tableNames = spellings(planned.map(({ name }) => name));
  const cellNames = spellings(plan.names.map(({ name }) => name));
  const named = workbook.names.items.flatMap((item) => {
    const name = cellNames.get(folded(item.name));
    return name === undefined ? [] : [{ name, item }];
  });
  // A log of an earlier version may have had few of them.
  const hasLogCells = named.some(({ name }) => name === versionName) || named.length * 2 >= cellNames.size;
  if (!hasLogCells && !workbook.tables.items.some(({ name }) => tableNames.has(folded(name))))
    refuseForeignNames(named.map(({ item }) => item.name));
  const loadedTables = workbook.tables.items.map(loadTable);
  const loadedCells = named
    .filter(({ item }) => !String(item.value).includes("#REF!"))
    .map(({ name, item }) => {
      const range = item.getRange().load("rowIndex,columnIndex,formulas");
      range.worksheet.load("name");
      return { name, range };
    });
  if (loadedTables.length + loadedCells.length > 0) await context.sync();
  const tables = loadedTables.map((one) => surveyed(one, tableNames));
  const cells = new Map(
    loadedCells.map(({ name, range }): [string, SurveyedCell] => [
      name,
      { sheet: range.worksheet.name, row: range.rowIndex, column: range.columnIndex, formula: range.formulas[0]?.[0] },
    ]),
  );
  const version = cells.get(versionName)?.formula;
  refuseForeignTables(planned, tables, hasLogCells);
  const wantedTables = new Set(planned.map((table) => table.name));
  return {
    sheets: workbook.worksheets.items.map((sheet) => sheet.name),
    tableSheets: new Map(tables.filter(({ name }) => wantedTables.has(name)).map(({ name, sheet }) => [name, sheet])),
    nameSheets: new Map([...cells].map(([name, { sheet }]) => [name, sheet])),
    version: typeof version === "number" ? version : undefined,
    tables,
    cells,
    structureLocked: workbook.protection.protected,
    protectedSheets: new Set(
      workbook.worksheets.items.filter((sheet) => sheet.protection.protected).map((sheet) => sheet.name),
    ),
  };
}
