import type { UnitSystem } from "../../core/units/unit-system.ts";
import { nodeOf } from "../formula/expression.ts";
import { formulaText } from "../formula/formula-text.ts";
import { logNames, rowNames } from "../formula/name-log.ts";
import type { ComputedColumn, FieldDefinition, LogDefinition, TableDefinition } from "../model/definition.ts";
import { referencesFor } from "../model/references.ts";

/** The formula of a column's cells as Excel shows it: leading "=", US separators, full-form structured references. */
export function columnFormula(
  column: ComputedColumn,
  table: TableDefinition,
  log: LogDefinition,
  system: UnitSystem,
): string {
  return `=${formulaText(nodeOf(column.formula(rowNames(table), logNames(log))), referencesFor(log, table, system))}`;
}

/** The formula of a named cell, likewise. */
export function fieldFormula(
  formula: NonNullable<FieldDefinition["formula"]>,
  log: LogDefinition,
  system: UnitSystem,
): string {
  return `=${formulaText(nodeOf(formula(logNames(log))), referencesFor(log, undefined, system))}`;
}
