/** Sheets, values, tables, columns and names: all that formulas may refer to. */
import type { WorkbookPlan } from "../../joblog/model/plan.ts";
import { type FieldInsertion, insertFields } from "./insert-fields.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import { insertColumns, type Insertion } from "./widen-tables.ts";
import { addTable, insideTable, writeValues } from "./write-sheet.ts";

export interface Structure {
  readonly placements: readonly SheetPlacement[];
  readonly columns: readonly Insertion[];
  readonly fields: readonly FieldInsertion[];
}

/** Names of planned cells that stand where the plan has them; new ones of a kept sheet stand elsewhere. */
function namesInPlace({ missingNames }: SheetPlacement, fields: readonly FieldInsertion[]): WorkbookPlan["names"] {
  const moved = new Set(fields.flatMap(({ names }) => names.map(({ name }) => name)));
  return missingNames.filter(({ name }) => !moved.has(name));
}

/** In the order that Excel needs: values, tables over them, names; formulas that refer to all come later. */
export function writeStructure(context: Excel.RequestContext, { placements, columns, fields }: Structure): void {
  const { worksheets, names } = context.workbook;
  for (const { kept, actual } of placements) if (!kept) worksheets.add(actual);
  insertColumns(context, columns);
  for (const placement of placements) {
    const { plan, kept, actual, missingTables } = placement;
    const worksheet = worksheets.getItem(actual);
    if (kept) {
      for (const table of missingTables) writeValues(worksheet, plan.cells.filter(insideTable(table)));
    } else writeValues(worksheet, plan.cells);
    for (const table of missingTables) addTable(worksheet, table);
    for (const name of namesInPlace(placement, fields))
      names.add(name.name, worksheet.getRangeByIndexes(name.row, name.column, 1, 1));
  }
  insertFields(context, fields);
  for (const { sheet, cells } of fields) writeValues(worksheets.getItem(sheet), cells);
}
