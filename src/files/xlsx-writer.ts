import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";

import { absoluteCell } from "../joblog/layout/addresses.ts";
import type { WorkbookPlan } from "../joblog/model/plan.ts";
import type { ValueOf } from "./cell-value.ts";
import { fileDate, finishParts } from "./finish-parts.ts";
import { writeChart } from "./write-chart.ts";
import { writeSheet } from "./write-sheet.ts";

/**
 * The plan as an .xlsx file: BATH functions in the spelling that Excel resolves at opening, every
 * formula with its value beside it, and nothing that makes Excel work everything out anew (without
 * the add-in that would turn the values into #NAME?). Throws a RangeError where `valueOf` knows no
 * value for a formula.
 */
export async function writeWorkbook(plan: WorkbookPlan, valueOf: ValueOf): Promise<Uint8Array> {
  installChartSupport();
  const workbook = new Workbook();
  workbook.creator = "Bathsheet";
  workbook.lastModifiedBy = "Bathsheet";
  workbook.created = fileDate;
  workbook.modified = fileDate;
  const written = plan.sheets.map((sheet) => ({ sheet, worksheet: writeSheet(workbook, sheet, valueOf) }));
  for (const { sheet, worksheet } of written) for (const chart of sheet.charts) writeChart(worksheet, chart);
  for (const { name, sheet, row, column } of plan.names)
    workbook.definedNames.add(absoluteCell(sheet, row, column), name);
  // The library's own check complains of the filter buttons, which finishParts takes out.
  // Nothing is compressed before finishParts, which packs the parts anew.
  const file = new Uint8Array(await workbook.xlsx.writeBuffer({ validate: false, zip: { level: 0 } }));
  return finishParts(file, plan);
}
