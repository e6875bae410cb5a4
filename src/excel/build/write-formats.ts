/** How the log looks, what it takes and how it prints. */
import type { AreaPlan, CellPlan, SheetPlan } from "../../joblog/model/plan.ts";
import type { Locations } from "./locations.ts";
import type { NarrowTable } from "./log-gaps.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import type { RangeFiller } from "./range-filler.ts";
import { insertedWidths } from "./widen-tables.ts";
import { foldColumns, insideTable, writePageSetUp } from "./write-sheet.ts";
import type { Structure } from "./write-structure.ts";
import { heightenRow, widenColumn, writeConditionalFormat, writeStyles } from "./write-styles.ts";
import { writeValidation } from "./write-validation.ts";

function dressNewSheet(worksheet: Excel.Worksheet, plan: SheetPlan, locations: Locations, filler: RangeFiller): void {
  plan.columnWidths.forEach((characters, column) => {
    widenColumn(worksheet, column, characters);
  });
  for (const { row, points } of plan.rowHeights) heightenRow(worksheet, row, points);
  writeStyles(worksheet, plan.cells, filler);
  for (const validation of plan.validations) writeValidation(worksheet, validation, validation.area, locations.area);
  for (const format of plan.conditionalFormats) writeConditionalFormat(worksheet, format, format.area);
  writePageSetUp(worksheet, plan);
  foldColumns(worksheet, plan);
}

/** Header and data cells of a table's new columns, at their places in this workbook. */
function newColumnCells(sheet: SheetPlan, { plan, missing }: NarrowTable, locations: Locations): readonly CellPlan[] {
  const { area, positions } = locations.table(plan.name);
  return missing.flatMap((column): readonly CellPlan[] => {
    const at = area.column + (positions.get(column.id) ?? 0);
    const planned = plan.area.column + plan.columns.indexOf(column);
    const header = sheet.cells.find((cell) => cell.row === plan.area.row && cell.column === planned);
    const look = {
      style: column.style,
      ...(column.numberFormat === undefined ? {} : { numberFormat: column.numberFormat }),
    };
    const body = Array.from({ length: area.rows - 1 }, (_, index): CellPlan => ({
      row: area.row + 1 + index,
      column: at,
      kind: "blank",
      ...look,
    }));
    return header === undefined ? body : [{ ...header, row: area.row, column: at }, ...body];
  });
}

/** Whether a planned area of a kept sheet is one of those that were added. */
function isAdded(
  area: AreaPlan,
  { plan, missingTables, missingNames }: SheetPlacement,
  narrow: readonly NarrowTable[],
): boolean {
  const cell = { row: area.row, column: area.column, style: "input", kind: "blank" } as const;
  if (missingTables.some((table) => insideTable(table)(cell))) return true;
  if (missingNames.some((name) => name.row === area.row && name.column === area.column)) return true;
  const table = plan.tables.find((one) => insideTable(one)(cell));
  const missing = narrow.find((one) => one.plan === table)?.missing;
  const column = table?.columns[area.column - table.area.column];
  return column !== undefined && missing?.includes(column) === true;
}

function dressKeptSheet(
  context: Excel.RequestContext,
  placement: SheetPlacement,
  { columns, fields }: Structure,
  narrow: readonly NarrowTable[],
  locations: Locations,
  filler: RangeFiller,
): void {
  const { plan, actual, missingTables } = placement;
  const sheet = (name: string): Excel.Worksheet => context.workbook.worksheets.getItem(name);
  const added = [
    ...plan.cells.filter((cell) => missingTables.some((table) => insideTable(table)(cell))),
    ...fields.filter((one) => one.sheet === actual).flatMap(({ cells }) => cells),
  ];
  writeStyles(sheet(actual), added, filler);
  for (const table of narrow.filter((one) => plan.tables.includes(one.plan))) {
    const { area, sheet: on } = locations.table(table.plan.name);
    writeStyles(sheet(on), newColumnCells(plan, table, locations), filler);
    const height = plan.rowHeights.find(({ row }) => row === table.plan.area.row);
    if (height !== undefined) heightenRow(sheet(on), area.row, height.points);
  }
  for (const { table, id, characters } of insertedWidths(plan, columns)) {
    const { area, positions, sheet: on } = locations.table(table);
    widenColumn(sheet(on), area.column + (positions.get(id) ?? 0), characters);
  }
  for (const validation of plan.validations.filter(({ area }) => isAdded(area, placement, narrow))) {
    const place = locations.area(plan.name, validation.area);
    writeValidation(sheet(place.sheet), validation, place.area, locations.area);
  }
  for (const format of plan.conditionalFormats.filter(({ area }) => isAdded(area, placement, narrow))) {
    const place = locations.area(plan.name, format.area);
    writeConditionalFormat(sheet(place.sheet), format, place.area);
  }
}

/** A new sheet wholly; of a kept one only what was added. */
export function writeFormats(
  context: Excel.RequestContext,
  placement: SheetPlacement,
  structure: Structure,
  narrow: readonly NarrowTable[],
  locations: Locations,
  filler: RangeFiller,
): void {
  if (placement.kept) dressKeptSheet(context, placement, structure, narrow, locations, filler);
  else dressNewSheet(context.workbook.worksheets.getItem(placement.actual), placement.plan, locations, filler);
}
