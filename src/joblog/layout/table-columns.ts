import type { UnitSystem } from "../../core/units/unit-system.ts";
import { cellFormat } from "../model/cell-formats.ts";
import type { ColumnDefinition, LogDefinition, TableDefinition } from "../model/definition.ts";
import { headerOf } from "../model/headers.ts";
import type { StyleId, TableColumnPlan } from "../model/plan.ts";
import { columnFormula } from "./written-formula.ts";

/** Style of a column's cells. */
function bodyStyle(column: ColumnDefinition, onPaper: boolean): StyleId {
  if (column.role === "input") return "input";
  if (column.helper === true) return "helper";
  return onPaper ? "paperLine" : "computed";
}

/** Style of a column's header. */
export function headerStyle(column: ColumnDefinition): StyleId {
  if (column.role === "input") return "headerInput";
  return column.helper === true ? "headerHelper" : "headerComputed";
}

/** Header, look, number format and formula of every column of a table, in a log of that system. */
export function tableColumns(
  log: LogDefinition,
  table: TableDefinition,
  system: UnitSystem,
): readonly TableColumnPlan[] {
  const onPaper = log.sheets.some((sheet) => sheet.document === true && sheet.tables.includes(table));
  return table.columns.map((column) => ({
    id: column.id,
    header: headerOf(column, system),
    style: bodyStyle(column, onPaper),
    numberFormat: cellFormat(column, column.role),
    ...(column.role === "computed" ? { formula: columnFormula(column, table, log, system) } : {}),
  }));
}
