import type { NamePlan, TablePlan } from "../../joblog/model/plan.ts";
import { LogProblem } from "../office-problems.ts";
import type { SheetPlacement } from "./plan-placement.ts";

function isBlank(values: readonly (readonly unknown[])[]): boolean {
  return values.every((line) => line.every((value) => value === ""));
}

/**
 * Lost parts of a sheet that is kept may only go where the plan had them, on blank ground beside their
 * label; `newNames` are no losses but come with a later version.
 */
export async function checkGaps(
  context: Excel.RequestContext,
  kept: readonly SheetPlacement[],
  newNames: readonly NamePlan[],
): Promise<void> {
  const grounds: { table: TablePlan; sheet: string; range: Excel.Range }[] = [];
  const labels: { name: NamePlan; sheet: string; wanted: unknown; range: Excel.Range }[] = [];
  for (const placement of kept) {
    const worksheet = context.workbook.worksheets.getItem(placement.actual);
    for (const table of placement.missingTables) {
      const { row, column, rows, columns } = table.area;
      const range = worksheet.getRangeByIndexes(row, column, rows, columns).load("values");
      grounds.push({ table, sheet: placement.actual, range });
    }
    for (const name of placement.missingNames.filter((one) => !newNames.includes(one))) {
      const label = placement.plan.cells.find((cell) => cell.row === name.row && cell.style === "fieldLabel");
      const range = worksheet.getRangeByIndexes(name.row, label?.column ?? 0, 1, 1).load("values");
      labels.push({ name, sheet: placement.actual, wanted: label?.kind === "value" ? label.value : "", range });
    }
  }
  if (grounds.length === 0 && labels.length === 0) return;
  await context.sync();
  for (const { table, sheet, range } of grounds) {
    if (!isBlank(range.values)) {
      throw new LogProblem({
        what: `The log's table ${table.name} is missing and its place on sheet ${sheet} is taken. Nothing was changed.`,
        remedy: `Undo what removed the table (Ctrl+Z). Or select its rows with the headings, make them a table (Insert, Table) and name it ${table.name}.`,
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
