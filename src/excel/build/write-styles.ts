import { signalLooks, styleLooks } from "../../joblog/layout/styles.ts";
import type { AreaPlan, CellPlan, ConditionalFormatPlan, Look } from "../../joblog/model/plan.ts";
import type { RangeFiller } from "./range-filler.ts";
import { styledAreas } from "./styled-areas.ts";
import { movedFormula } from "./write-validation.ts";

/** Excel measures a column in points; a character of the normal font is 7 pixels, the margin 5, a pixel 0.75 point. */
function columnPoints(characters: number): number {
  return (characters * 7 + 5) * 0.75;
}

const edges = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal", "InsideVertical"] as const;

function drawBorder(range: Excel.Range, color: string, size: { rows: number; columns: number }): void {
  for (const edge of edges) {
    if (edge === "InsideHorizontal" && size.rows === 1) continue;
    if (edge === "InsideVertical" && size.columns === 1) continue;
    const border = range.format.borders.getItem(edge);
    border.style = "Continuous";
    border.color = color;
  }
}

function applyLook(range: Excel.Range, look: Look): void {
  if (look.fill !== undefined) range.format.fill.color = look.fill;
  if (look.color !== undefined) range.format.font.color = look.color;
  if (look.bold !== undefined) range.format.font.bold = look.bold;
  if (look.italic !== undefined) range.format.font.italic = look.italic;
  if (look.size !== undefined) range.format.font.size = look.size;
  if (look.wrap !== undefined) {
    range.format.wrapText = look.wrap;
    range.format.verticalAlignment = "Top";
  }
}

/** `characters` wide, as the plan counts. */
export function widenColumn(worksheet: Excel.Worksheet, column: number, characters: number): void {
  worksheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = columnPoints(characters);
}

export function heightenRow(worksheet: Excel.Worksheet, row: number, points: number): void {
  worksheet.getRangeByIndexes(row, 0, 1, 1).format.rowHeight = points;
}

/** Fills, fonts, borders and number formats, one command for each rectangle of one look. */
export function writeStyles(worksheet: Excel.Worksheet, cells: readonly CellPlan[], filler: RangeFiller): void {
  for (const area of styledAreas(cells)) {
    const range = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
    const look = styleLooks[area.style];
    applyLook(range, look);
    if (look.border !== undefined) drawBorder(range, look.border, area);
    if (area.align !== undefined) range.format.horizontalAlignment = area.align === "right" ? "Right" : "Left";
    if (area.numberFormat !== undefined) filler.numberFormat(worksheet, area, area.numberFormat);
  }
}

/** Words that call for action get a colour as well; the rule compares text and calls no BATH function. */
export function writeConditionalFormat(worksheet: Excel.Worksheet, plan: ConditionalFormatPlan, area: AreaPlan): void {
  const { row, column, rows, columns } = area;
  const format = worksheet.getRangeByIndexes(row, column, rows, columns).conditionalFormats.add("Custom");
  const look = signalLooks[plan.look];
  format.custom.rule.formula = movedFormula(plan.formula, plan.area, area);
  if (look.fill !== undefined) format.custom.format.fill.color = look.fill;
  if (look.color !== undefined) format.custom.format.font.color = look.color;
  if (look.bold !== undefined) format.custom.format.font.bold = look.bold;
}
