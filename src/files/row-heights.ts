import { linesOf } from "../joblog/layout/line-breaks.ts";
import { styleLooks } from "../joblog/layout/styles.ts";
import type { CellPlan, SheetPlan } from "../joblog/model/plan.ts";
import type { ValueOf } from "./cell-value.ts";

const linePoints = 13;

/** A width counts digits; letters of running text are narrower on average. */
const lettersByDigit = 1.15;

function shownText(cell: CellPlan, sheet: string, valueOf: ValueOf): string {
  if (cell.kind === "value" && typeof cell.value === "string") return cell.value;
  const known = cell.kind === "formula" ? valueOf(sheet, cell.row, cell.column) : undefined;
  return typeof known === "string" ? known : "";
}

/**
 * Heights of rows whose text wraps, in points by row. Excel finds them out when a person types; not
 * every program does when it opens a file. Rows of a single line keep the usual height.
 */
export function rowHeights(plan: SheetPlan, valueOf: ValueOf): ReadonlyMap<number, number> {
  const heights = new Map<number, number>();
  for (const cell of plan.cells) {
    if (styleLooks[cell.style].wrap !== true) continue;
    const lines = linesOf(
      shownText(cell, plan.name, valueOf),
      Math.floor((plan.columnWidths[cell.column] ?? 10) * lettersByDigit),
    ).length;
    if (lines > 1) heights.set(cell.row, Math.max(heights.get(cell.row) ?? 0, lines * linePoints + 2));
  }
  for (const { row, points } of plan.rowHeights) heights.set(row, points);
  return heights;
}
