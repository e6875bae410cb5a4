import type { UnitSystem } from "../../core/units/unit-system.ts";
import { nodeOf } from "../formula/expression.ts";
import { formulaText } from "../formula/formula-text.ts";
import { logNames, rowNames } from "../formula/name-log.ts";
import type { ComputedColumn, FieldDefinition, LogDefinition, TableDefinition } from "../model/definition.ts";
import { referencesFor } from "../model/references.ts";

/** By log, table, unit system and column: putting a text together takes far longer than all else of laying out. */
const known = new WeakMap<LogDefinition, WeakMap<TableDefinition, Map<string, string>>>();

function knownOf(log: LogDefinition, table: TableDefinition): Map<string, string> {
  const ofLog = known.get(log) ?? new WeakMap<TableDefinition, Map<string, string>>();
  const ofTable = ofLog.get(table) ?? new Map<string, string>();
  known.set(log, ofLog.set(table, ofTable));
  return ofTable;
}

/** The formula of a column's cells as Excel shows it: leading "=", US separators, full-form structured references. */
export function columnFormula(
  column: ComputedColumn,
  table: TableDefinition,
  log: LogDefinition,
  system: UnitSystem,
): string {
  const texts = knownOf(log, table);
  const key = `${system} ${column.id}`;
  const text =
    texts.get(key) ??
    `=${formulaText(nodeOf(column.formula(rowNames(table), logNames(log))), referencesFor(log, table, system))}`;
  texts.set(key, text);
  return text;
}

/** The formula of a named cell, likewise. */
export function fieldFormula(
  formula: NonNullable<FieldDefinition["formula"]>,
  log: LogDefinition,
  system: UnitSystem,
): string {
  return `=${formulaText(nodeOf(formula(logNames(log))), referencesFor(log, undefined, system))}`;
}
