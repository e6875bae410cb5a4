import type { WorkbookPlan } from "../joblog/plan.ts";
import { checkGaps } from "./check-gaps.ts";
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
