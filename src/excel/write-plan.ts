import type { NamePlan, TablePlan, WorkbookPlan } from "../joblog/plan.ts";
import { LogProblem } from "./office-problems.ts";
import { placeSheets, type SheetPlacement } from "./plan-placement.ts";
import { surveyWorkbook } from "./survey-workbook.ts";
import { fillChart, placeChart } from "./write-chart.ts";
import { writeConditionalFormat, writeLooks } from "./write-looks.ts";
import { addTable, insideTable, writeFormulas, writePageSetUp, writeValues } from "./write-sheet.ts";
import { writeValidation } from "./write-validation.ts";

/** What building the log did to the workbook. */
export interface BuildReport {
  readonly added: readonly string[];
  readonly kept: readonly string[];
  /** Log sheets that took another name because the shop has a sheet of that name. */
  readonly renamed: readonly { readonly planned: string; readonly actual: string }[];
}

function sheetOf(context: Excel.RequestContext, placement: SheetPlacement): Excel.Worksheet {
  return context.workbook.worksheets.getItem(placement.actual);
}

function isBlank(values: readonly (readonly unknown[])[]): boolean {
  return values.every((line) => line.every((value) => value === ""));
}

/** Missing parts of a sheet that is kept may only go where the plan had them, on blank ground beside their label. */
async function checkGaps(context: Excel.RequestContext, kept: readonly SheetPlacement[]): Promise<void> {
  const grounds: { table: TablePlan; sheet: string; range: Excel.Range }[] = [];
  const labels: { name: NamePlan; sheet: string; wanted: unknown; range: Excel.Range }[] = [];
  for (const placement of kept) {
    const worksheet = sheetOf(context, placement);
    for (const table of placement.missingTables) {
      const { row, column, rows, columns } = table.area;
      const range = worksheet.getRangeByIndexes(row, column, rows, columns).load("values");
      grounds.push({ table, sheet: placement.actual, range });
    }
    for (const name of placement.missingNames) {
      const label = placement.plan.cells.find((cell) => cell.row === name.row && cell.column === name.column - 1);
      const range = worksheet.getRangeByIndexes(name.row, Math.max(0, name.column - 1), 1, 1).load("values");
      labels.push({ name, sheet: placement.actual, wanted: label?.kind === "value" ? label.value : "", range });
    }
  }
  if (grounds.length === 0 && labels.length === 0) return;
  await context.sync();
  for (const { table, sheet, range } of grounds) {
    if (!isBlank(range.values)) {
      throw new LogProblem({
        what: `The log's table ${table.name} is missing and its place on sheet ${sheet} is taken.`,
        remedy: "Undo what removed or renamed the table (Ctrl+Z), or build the log in a new workbook.",
      });
    }
  }
  for (const { name, sheet, wanted, range } of labels) {
    if (range.values[0]?.[0] !== wanted) {
      throw new LogProblem({
        what: `The log's named cell ${name.name} is missing and its label on sheet ${sheet} has moved.`,
        remedy: `Give the cell its name back (Formulas, Name Manager: ${name.name}), or undo (Ctrl+Z).`,
      });
    }
  }
}

function addNames(context: Excel.RequestContext, placement: SheetPlacement): void {
  for (const name of placement.missingNames) {
    context.workbook.names.add(name.name, sheetOf(context, placement).getRangeByIndexes(name.row, name.column, 1, 1));
  }
}

/** The cells that are to be written: a new sheet's all, a kept sheet's only those of its missing tables. */
function cellsToWrite(placement: SheetPlacement): SheetPlacement["plan"]["cells"] {
  const { plan, kept, missingTables } = placement;
  return kept ? plan.cells.filter((cell) => missingTables.some((table) => insideTable(table)(cell))) : plan.cells;
}

/** Contents in the order that Excel needs: values, tables over them, names, then formulas that refer to both. */
function writeContents(context: Excel.RequestContext, placements: readonly SheetPlacement[]): void {
  for (const { kept, actual } of placements) if (!kept) context.workbook.worksheets.add(actual);
  for (const placement of placements) {
    const worksheet = sheetOf(context, placement);
    if (placement.kept) {
      for (const table of placement.missingTables) writeValues(worksheet, placement.plan.cells.filter(insideTable(table)));
    } else writeValues(worksheet, placement.plan.cells);
    for (const table of placement.missingTables) addTable(worksheet, table);
    addNames(context, placement);
  }
  for (const placement of placements) {
    writeFormulas(sheetOf(context, placement), cellsToWrite(placement), placement.missingTables);
  }
}

function writeDress(context: Excel.RequestContext, placements: readonly SheetPlacement[], sheetName: (planned: string) => string): void {
  for (const placement of placements) {
    const worksheet = sheetOf(context, placement);
    const { plan, kept } = placement;
    writeLooks(worksheet, { ...plan, columnWidths: kept ? [] : plan.columnWidths, rowHeights: kept ? [] : plan.rowHeights, cells: cellsToWrite(placement) });
    if (kept) continue;
    for (const validation of plan.validations) writeValidation(worksheet, validation, sheetName);
    for (const format of plan.conditionalFormats) writeConditionalFormat(worksheet, format);
    writePageSetUp(worksheet, plan);
  }
}

/** Takes back what a failed build had added, so that nothing half-written stays. */
async function takeBackBuild(context: Excel.RequestContext, placements: readonly SheetPlacement[]): Promise<void> {
  const { workbook } = context;
  const added = placements.filter(({ kept }) => !kept);
  const names = added.flatMap(({ missingNames }) => missingNames.map(({ name }) => workbook.names.getItemOrNullObject(name)));
  const sheets = added.map(({ actual }) => workbook.worksheets.getItemOrNullObject(actual));
  await context.sync();
  for (const item of [...names, ...sheets]) if (!item.isNullObject) item.delete();
  await context.sync();
}

/**
 * Copies a laid-out log into the open workbook. Log sheets that exist are left alone but for missing
 * tables and names; a shop's own sheet of the same name is left alone too and the log's sheet takes
 * another name. Throws a LogProblem, or Office's error, with the workbook as it was.
 */
export async function writePlan(context: Excel.RequestContext, plan: WorkbookPlan): Promise<BuildReport> {
  const placements = placeSheets(plan, await surveyWorkbook(context, plan));
  await checkGaps(context, placements.filter(({ kept }) => kept));
  const actualNames = new Map(placements.map(({ plan: sheet, actual }) => [sheet.name, actual]));
  const sheetName = (planned: string): string => actualNames.get(planned) ?? planned;
  const fresh = placements.filter(({ kept }) => !kept);
  context.runtime.enableEvents = false;
  try {
    context.workbook.application.suspendApiCalculationUntilNextSync();
    context.workbook.application.suspendScreenUpdatingUntilNextSync();
    writeContents(context, placements);
    writeDress(context, placements, sheetName);
    const charts = fresh.flatMap((placement) =>
      placement.plan.charts.map((chart) => {
        const data = context.workbook.worksheets.getItem(sheetName(chart.dataSheet));
        return { chart: placeChart(chart, sheetOf(context, placement), data), plan: chart, data };
      }),
    );
    await context.sync();
    for (const { chart, plan: chartPlan, data } of charts) fillChart(chart, chartPlan, data);
    const first = placements[0];
    if (first !== undefined) sheetOf(context, first).activate();
    await context.sync();
  } catch (error) {
    await takeBackBuild(context, placements);
    throw error;
  } finally {
    context.runtime.enableEvents = true;
    await context.sync();
  }
  return {
    added: fresh.map(({ actual }) => actual),
    kept: placements.filter(({ kept }) => kept).map(({ actual }) => actual),
    renamed: placements.filter(({ plan: sheet, actual, kept }) => !kept && sheet.name !== actual).map(({ plan: sheet, actual }) => ({ planned: sheet.name, actual })),
  };
}
