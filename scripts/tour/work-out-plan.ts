import { cellValue } from "../../src/excel/cell-text.ts";
import type { ValueOf } from "../../src/files/cell-value.ts";
import type { SheetPlan, WorkbookPlan } from "../../src/joblog/model/plan.ts";
import type { Host } from "../../src/workbench/host/create-host.ts";

function blockOf({ cells }: SheetPlan): (string | number | boolean)[][] {
  const size = (of: "row" | "column"): number => Math.max(...cells.map((cell) => cell[of])) + 1;
  const block = Array.from({ length: size("row") }, () =>
    Array.from({ length: size("column") }, (): string | number | boolean => ""),
  );
  for (const cell of cells) {
    const line = block[cell.row];
    if (line !== undefined && cell.kind !== "blank")
      line[cell.column] = cell.kind === "formula" ? cell.formula : cellValue(cell.value);
  }
  return block;
}

/**
 * Writes the plan's cells into a blank workbook of the grid and gives what its formulas answer. The
 * answer throws a RangeError where a formula answers an error or nothing.
 */
export async function workOutPlan(host: Host, plan: WorkbookPlan): Promise<ValueOf> {
  await host.Excel.run(async (context) => {
    for (const { name } of plan.sheets) context.workbook.worksheets.add(name);
    for (const sheet of plan.sheets) {
      const block = blockOf(sheet);
      context.workbook.worksheets
        .getItem(sheet.name)
        .getRangeByIndexes(0, 0, block.length, block[0]?.length ?? 0).formulas = block;
    }
    await context.sync();
  });
  const values = new Map(plan.sheets.map(({ name }) => [name, host.values(name)] as const));
  return (sheet, row, column) => {
    const value = values.get(sheet)?.[row]?.[column] ?? "";
    if (typeof value === "string" && (value === "" || value.startsWith("#"))) {
      throw new RangeError(
        `The formula on ${sheet}, row ${String(row + 1)}, column ${String(column + 1)} answers "${value}".`,
      );
    }
    return value;
  };
}
