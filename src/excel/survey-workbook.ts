import type { WorkbookPlan } from "../joblog/plan.ts";
import { refuseForeignTables } from "./foreign-tables.ts";
import { LogProblem } from "./office-problems.ts";
import type { WorkbookSurvey } from "./plan-placement.ts";

async function sheetsOf(
  context: Excel.RequestContext,
  ranges: ReadonlyMap<string, Excel.Worksheet>,
): Promise<ReadonlyMap<string, string>> {
  if (ranges.size === 0) return new Map();
  for (const sheet of ranges.values()) sheet.load("name");
  await context.sync();
  return new Map([...ranges].map(([name, sheet]) => [name, sheet.name]));
}

/** Reads which of the plan's tables and names the workbook already holds, and where. */
export async function surveyWorkbook(context: Excel.RequestContext, plan: WorkbookPlan): Promise<WorkbookSurvey> {
  const { workbook } = context;
  workbook.load("readOnly");
  workbook.worksheets.load("items/name");
  workbook.tables.load("items/name");
  workbook.names.load("items/name,items/value");
  await context.sync();
  if (workbook.readOnly) {
    throw new LogProblem({
      what: "This workbook is open for reading only.",
      remedy: "Save a copy (File, Save a Copy) and build the log there.",
    });
  }
  const planned = plan.sheets.flatMap((sheet) => sheet.tables);
  const wantedTables = new Set(planned.map((table) => table.name));
  const wantedNames = new Set(plan.names.map((name) => name.name));
  const tables = workbook.tables.items.filter((table) => wantedTables.has(table.name));
  const names = workbook.names.items.filter((item) => wantedNames.has(item.name) && !String(item.value).includes("#REF!"));
  await refuseForeignTables(context, planned, tables);
  const tableSheets = await sheetsOf(context, new Map(tables.map((table) => [table.name, table.worksheet])));
  const nameSheets = await sheetsOf(context, new Map(names.map((item) => [item.name, item.getRange().worksheet])));
  return { sheets: workbook.worksheets.items.map((sheet) => sheet.name), tableSheets, nameSheets };
}
