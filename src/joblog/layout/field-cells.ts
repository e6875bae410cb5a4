import type { UnitSystem } from "../../core/units/unit-system.ts";
import { cellFormat } from "../model/cell-formats.ts";
import type { LogDefinition, RowValue } from "../model/definition.ts";
import { headerOf } from "../model/headers.ts";
import type { CellPlan } from "../model/plan.ts";
import type { PlacedField } from "./placement.ts";
import { fieldFormula } from "./written-formula.ts";

function valueCell(placed: PlacedField, log: LogDefinition, system: UnitSystem, given: RowValue | undefined): CellPlan {
  const { field, row, valueColumn, sheet } = placed;
  const isInput = field.formula === undefined && field.fixed !== true;
  const computed = sheet.document === true || sheet.arrangement === "charts" ? "fieldStated" : "fieldComputed";
  const look = {
    row,
    column: valueColumn,
    style: isInput ? "fieldInput" : computed,
    numberFormat: cellFormat(field, isInput ? "input" : "computed"),
    ...(sheet.document === true ? { align: "left" as const } : {}),
  } as const;
  if (field.formula !== undefined)
    return { ...look, kind: "formula", formula: fieldFormula(field.formula, log, system) };
  const value = given ?? field.initial?.[system];
  return value === undefined ? { ...look, kind: "blank" } : { ...look, kind: "value", value };
}

/** Label, value and help of a named cell; over a chart its words stand alone. */
export function fieldCells(
  placed: PlacedField,
  log: LogDefinition,
  system: UnitSystem,
  given: RowValue | undefined,
): readonly CellPlan[] {
  const { field, row, labelColumn, valueColumn, sheet } = placed;
  if (sheet.arrangement === "charts") return [valueCell(placed, log, system, given)];
  const help: readonly CellPlan[] =
    sheet.document === true
      ? []
      : [{ row, column: valueColumn + 1, style: "fieldHelp", kind: "value", value: field.help }];
  return [
    { row, column: labelColumn, style: "fieldLabel", kind: "value", value: headerOf(field, system) },
    valueCell(placed, log, system, given),
    ...help,
  ];
}
