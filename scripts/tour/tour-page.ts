import type { SheetPlan } from "../../src/joblog/model/plan.ts";

const titlePoints = 22;

/** A sheet of the tour: portrait, one page wide, its title again on every page. */
export function tourPage(
  sheet: Pick<SheetPlan, "id" | "name" | "tabColor" | "columnWidths" | "cells" | "validations">,
  rowHeights: SheetPlan["rowHeights"] = [],
): SheetPlan {
  return {
    ...sheet,
    rowHeights: [{ row: 0, points: titlePoints }, ...rowHeights],
    tables: [],
    conditionalFormats: [],
    charts: [],
    frozenRows: 0,
    orientation: "portrait",
    footer: "Arithmetic aid. The label, SDS and permit win.",
    titleRows: { first: 0, last: 0 },
    lastPrintedColumn: sheet.columnWidths.length - 1,
    pagesWide: 1,
  };
}
