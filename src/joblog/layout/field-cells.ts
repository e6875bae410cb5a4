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
  const isStated = (sheet.document === true && field.signed !== true) || sheet.arrangement === "charts";
  const computed = isStated ? "fieldStated" : "fieldComputed";
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
  const { field, row, labelColumn, helpColumn, sheet } = placed;
  const value = valueCell(placed, log, system, given);
  if (sheet.arrangement === "charts") return [value];
  // Two fields of a line would have their help in one cell.
  const help: readonly CellPlan[] =
    field.beside === true ? [] : [{ row, column: helpColumn, style: "fieldHelp", kind: "value", value: field.help }];
  return [
    { row, column: labelColumn, style: "fieldLabel", kind: "value", value: headerOf(field, system) },
    value,
    ...help,
  ];
}
